#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// Normal depth of a surveyed section, by name; see normal_flow for the calculation.
const Method& normal_depth_method();

}  // namespace proofstone
