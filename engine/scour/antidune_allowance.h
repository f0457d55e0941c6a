#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// How far the troughs of antidunes reach below the mean bed: half their height,
/// ½·0.14·2π·V²/g = 0.0137·V² (ft, ft/s), and at most half the depth [memory].
struct AntiduneInputs {
  Velocity velocity;
  Length depth;
};

struct AntiduneResult {
  Length trough;
};

Expected<AntiduneResult> antidune_allowance(const AntiduneInputs& inputs, Steps& steps);

const Method& antidune_allowance_method();

}  // namespace proofstone
