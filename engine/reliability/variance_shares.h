#pragma once

#include <cstdint>
#include <vector>

#include "engine/reliability/score_space.h"

namespace proofstone {

/// Sobol' indices of the margin: what share of its variance each variable brings alone, and with
/// everything it acts on together. No straight line is assumed.
struct VarianceShares {
  std::vector<double> alone;     ///< first-order indices; they add to at most 1
  std::vector<double> together;  ///< total indices; they add to at least 1
  double variance = 0;
};

/// By sampling in independent scores: first-order indices by the estimator of Saltelli (2010),
/// total indices by that of Jansen (1999) [both from memory]. `points` evaluations for each
/// variable and two more. Problems: variables that are correlated (the indices would have no
/// meaning), points without an answer, a margin that nothing moves.
Expected<VarianceShares> variance_shares(const ScoreSpace& space, std::uint64_t points);

}  // namespace proofstone
