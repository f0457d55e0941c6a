#pragma once

#include <vector>

#include "engine/reliability/limit_state.h"

namespace proofstone {

/// What first-order second-moment says of a limit state: the margin is taken as a straight line
/// through its value at the means.
struct FirstOrderResult {
  double margin_at_means = 0;
  double standard_deviation = 0;     ///< of the margin
  double beta = 0;                   ///< margin over standard deviation
  double probability = 0;            ///< of a negative margin: Φ(−β)
  std::vector<double> derivatives;   ///< of the margin, for each unit of each variable
  std::vector<double> elasticities;  ///< change of the margin for each 100 % of each variable
  std::vector<double> shares;        ///< of the variance; they add to 1
};

/// Mean-value first-order second-moment analysis: derivatives at the means by central differences,
/// variance by σG² = ΣᵢΣⱼ (∂G/∂xᵢ)σᵢ ρᵢⱼ (∂G/∂xⱼ)σⱼ.
/// Problems: no variables, contradicting correlations, no answer at or beside the means, a margin
/// that no variable moves.
Expected<FirstOrderResult> first_order(const LimitState& limit,
                                       const std::vector<Correlation>& correlations = {});

}  // namespace proofstone
