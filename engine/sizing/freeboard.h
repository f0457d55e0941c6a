#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// Height of a lining or bank above the design water by the rule that the designer names: USACE
/// EM 1110-2-1601, FHWA HEC-11 or HEC-22, USBR canals, or the Swiss commission on floods (KOHS).
const Method& freeboard_method();

}  // namespace proofstone
