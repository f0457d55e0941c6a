#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// Kb of FHWA HEC-15 3rd ed. (2005) eqs. 3.6 and 3.7 by the centreline radius over a width, the
/// same curve as fhwa-shear-lining uses, and the
/// shear in the bend, by name.
const Method& bend_shear_method();

}  // namespace proofstone
