#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Percent smaller after all above a size was taken out.
struct ScalpedPercentInputs {
  Dimensionless passing;           ///< percent smaller at the size asked for, before
  Dimensionless passing_at_scalp;  ///< percent smaller at the size of scalping
};

struct ScalpedPercentResult {
  Dimensionless percent;  ///< smaller at the size asked for, after
  Dimensionless loss;     ///< share of the mass taken out
};

Expected<ScalpedPercentResult> scalped_percent(const ScalpedPercentInputs& inputs, Steps& steps);

const Method& scalped_percent_method();

}  // namespace proofstone
