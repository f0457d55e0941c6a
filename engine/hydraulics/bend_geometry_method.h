#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// Radius, turn and tangent points of a bend from the centreline in plan, by name; see
/// engine/hydraulics/centreline.h for the calculation.
const Method& bend_geometry_method();

}  // namespace proofstone
