#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// The depth at a distance from a known one in a straight trapezoidal channel.
const Method& gradually_varied_flow_method();

}  // namespace proofstone
