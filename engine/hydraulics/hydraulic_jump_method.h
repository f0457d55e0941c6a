#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// The depth after a hydraulic jump in a trapezoidal channel, and the energy lost in it.
const Method& hydraulic_jump_method();

}  // namespace proofstone
