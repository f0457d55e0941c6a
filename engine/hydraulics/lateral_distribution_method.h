#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// Velocity and shear across a section with exchange between neighbouring water, by name; see
/// lateral_distribution for the calculation.
const Method& lateral_distribution_method();

}  // namespace proofstone
