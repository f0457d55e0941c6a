#pragma once

#include "engine/method/method.h"

namespace proofstone {

struct RankLimitsInputs {
  Dimensionless stones;                                ///< whole number
  Dimensionless percent = Dimensionless::number(0.5);  ///< of the percentile size
  Dimensionless confidence = Dimensionless::number(0.95);
};

struct RankLimitsResult {
  Dimensionless lower_rank;
  Dimensionless upper_rank;
  Dimensionless coverage;  ///< confidence actually reached
};

/// Which two stones, ranked by size, hold the size at a percent between them: the largest l with
/// P(B ≤ l − 1) ≤ α/2 and the smallest u with P(B ≥ u) ≤ α/2, B binomial.
Expected<RankLimitsResult> rank_limits(const RankLimitsInputs& in, Steps& steps);

/// The same by name: "rank-limits".
const Method& rank_limits_method();

}  // namespace proofstone
