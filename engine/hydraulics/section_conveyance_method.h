#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// Geometry, conveyance and discharge of a surveyed section at a given level, by name; see
/// flow_at_level for the calculation.
const Method& section_conveyance_method();

}  // namespace proofstone
