#pragma once

#include <vector>

#include "engine/finding/problem.h"

namespace proofstone {

/// Shares f of the columns, each from 0 up and 1 together, for which Σ f·column comes closest to
/// the target in the sum of squares: active sets in the manner of Lawson and Hanson (1974).
/// `columns` all have the length of `target`. Problems: no column, lengths that differ, numbers
/// that are not finite, and a search that does not end (columns too alike for doubles).
Expected<std::vector<double>> best_fit_shares(const std::vector<std::vector<double>>& columns,
                                              const std::vector<double>& target);

/// Σ (Σ f·column − target)².
double squared_misfit(const std::vector<std::vector<double>>& columns,
                      const std::vector<double>& target, const std::vector<double>& shares);

}  // namespace proofstone
