#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// Critical depth of a surveyed section, by name; see critical_flows for the calculation.
const Method& critical_depth_method();

}  // namespace proofstone
