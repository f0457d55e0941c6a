#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Reliability index of a resistance R over a load S that are independent: exact when both are
/// lognormal, and beside it the one for two normal quantities.
struct LognormalMarginInputs {
  Dimensionless mean_ratio;  ///< μR/μS
  Dimensionless resistance_variation;
  Dimensionless load_variation;
};

struct LognormalMarginResult {
  Dimensionless beta;
  Dimensionless probability;
  Dimensionless normal_beta;
  Dimensionless normal_probability;
};

/// Problem: neither is uncertain.
Expected<LognormalMarginResult> lognormal_margin(const LognormalMarginInputs& inputs, Steps& steps);

const Method& lognormal_margin_method();

}  // namespace proofstone
