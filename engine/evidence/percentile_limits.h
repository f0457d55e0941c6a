#pragma once

#include <vector>

#include "engine/method/method.h"

namespace proofstone {

/// How the limits of the percent are found before the curve is read.
enum class PercentLimitsBy { exact_binomial, normal_approximation };

struct PercentileLimitsInputs {
  std::vector<Length> edges;          ///< of the bins, from small to large; one more than bins
  std::vector<Dimensionless> counts;  ///< stones in each bin, picked on a grid
  Dimensionless percent = Dimensionless::number(0.5);
  Dimensionless confidence = Dimensionless::number(0.95);
  PercentLimitsBy limits = PercentLimitsBy::exact_binomial;
};

struct PercentileLimitsResult {
  Length size;
  Length low;
  Length high;
};

/// Limits of the size at a percent: the percents that a count of a true share p can reach, read on
/// the sample's own curve (Eaton, Moore & MacKenzie 2019).
Expected<PercentileLimitsResult> percentile_limits(const PercentileLimitsInputs& in, Steps& steps);

/// The same by name: "percentile-limits".
const Method& percentile_limits_method();

}  // namespace proofstone
