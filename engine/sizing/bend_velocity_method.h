#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// Velocity at the outer bank of a bend and below it, by name; see bend_velocity_ratio and
/// bend_ratio_below.
const Method& bend_velocity_method();

}  // namespace proofstone
