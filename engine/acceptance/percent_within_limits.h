#pragma once

#include <optional>
#include <vector>

#include "engine/method/method.h"

namespace proofstone {

struct PercentWithinLimitsInputs {
  std::vector<Dimensionless> values;         ///< one of each load, in any one unit
  std::optional<Dimensionless> lower_limit;  ///< in the same unit
  std::optional<Dimensionless> upper_limit;
};

struct PercentWithinLimitsResult {
  Dimensionless mean;
  Dimensionless standard_deviation;
  Dimensionless percent_within;  ///< share
  Dimensionless table_percent;   ///< whole percents, each side rounded up as printed tables do
};

/// Share of a normal lot inside limits, estimated from n values of which only mean and deviation
/// are used: `quality_index` is (x̄ − L)/s or (U − x̄)/s. n at least 3.
double share_within(double quality_index, double values);

/// Percent within limits of a lot (AASHTO R 9, FAA AC 150/5370-10 Section 110). Problems: fewer
/// than three values, values that do not differ, no limit, limits reversed.
Expected<PercentWithinLimitsResult> percent_within_limits(const PercentWithinLimitsInputs& in,
                                                          Steps& steps);

/// The same by name: "percent-within-limits".
const Method& percent_within_limits_method();

}  // namespace proofstone
