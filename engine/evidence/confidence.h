#pragma once

#include <optional>
#include <vector>

#include "engine/evidence/measured_gradation.h"

namespace proofstone {

struct PercentInterval {
  double low = 0;   ///< percent
  double high = 100;
};

/// Clopper–Pearson two-sided limits for the percent smaller, at `confidence` (0.95 for 95 %), when
/// `percent` of `effective_stones` were smaller. The number smaller need not be whole: the beta
/// form of the limits is used (Korn & Graubard 1998 use it so for weighted samples [memory]).
PercentInterval percent_smaller_interval(double percent, double effective_stones,
                                         double confidence);

/// How strongly the evidence shows that the true percent smaller than `size` is at most (or at
/// least) `limit`: one minus the one-sided binomial p-value of the opposite. 0 to 1; 0.5 means
/// nothing is known either way.
double confidence_at_most(double percent, double effective_stones, double limit);
double confidence_at_least(double percent, double effective_stones, double limit);

/// Limits for the size at a percent: the sizes at which the interval for the percent smaller
/// crosses it (both ends read on the sample's own curve; Eaton, Moore & MacKenzie 2019). An end is
/// absent where the curve does not reach.
struct SizeInterval {
  std::optional<Length> low;
  std::optional<Length> high;
};
SizeInterval size_interval(const MeasuredGradation& measured, double percent, double confidence);

/// Points of the curve with their pointwise limits, for drawing: at every point of the curve.
struct ConfidencePoint {
  Length size;
  double percent = 0;
  PercentInterval interval;
};
std::vector<ConfidencePoint> confidence_band(const MeasuredGradation& measured, double confidence);

}  // namespace proofstone
