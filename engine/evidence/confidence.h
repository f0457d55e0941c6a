#pragma once

#include <optional>
#include <vector>

#include "engine/evidence/measured_gradation.h"

namespace proofstone {

/// Chance that at most (at least) `smaller` of `stones` stones are smaller than a size, when the
/// true share is `percent`: the binomial sum in its beta form, which needs no whole numbers. 0 ≤
/// smaller ≤ stones, stones > 0, 0 ≤ percent ≤ 100; anything else, NaN too, gives 1, the value that
/// shows nothing.
double chance_of_at_most(double smaller, double stones, double percent);
double chance_of_at_least(double smaller, double stones, double percent);

/// z with `probability` of the standard normal distribution below it. Between 0 and 1, both
/// outside; anything else gives NaN.
double normal_quantile(double probability);

/// t with `tail`, above 0 and up to one half, of Student's distribution above it. Degrees of
/// freedom above 0; anything else gives NaN.
double student_quantile_above(double tail, double degrees_of_freedom);

/// Chance that a χ² variable of `degrees_of_freedom` exceeds `statistic`. Both positive, else 1.
double chi_square_tail(double statistic, double degrees_of_freedom);

struct PercentInterval {
  double low = 0;  ///< percent
  double high = 100;
};

/// Clopper–Pearson two-sided limits for the percent smaller, at `confidence` (0.95 for 95 %), when
/// `percent` of `effective_stones` were smaller. The number smaller need not be whole: the beta
/// form of the limits is used (Korn & Graubard 1998 use it so for weighted samples [memory]).
/// Without stones, or with a confidence outside 0 to 1, the limits are 0 and 100.
PercentInterval percent_smaller_interval(double percent, double effective_stones,
                                         double confidence);

/// Jeffreys' two-sided limits for the same, 100·B⁻¹(α/2; x + ½, n − x + ½) and its like above
/// (Brown, Cai & DasGupta 2001, Statistical Science 16, 101–133 [memory]): half a stone added to
/// either side. They hold as often as is stated on average, where exact limits hold at least as
/// often; the share of a curve through single stones, which changes from stone to stone without
/// steps, makes that nearly so at every share (simulated: docs/simulation.md). Ends and nonsense as
/// above.
PercentInterval jeffreys_interval(double percent, double effective_stones, double confidence);

/// What the look states of the percent smaller than `size`: Jeffreys' limits by the effective
/// stones there, widened by what the curve may be misread between the edges of its ranges.
PercentInterval stated_interval(const MeasuredGradation& measured, Length size, double confidence);

/// How strongly the evidence shows that the true percent smaller than a size is at most (or at
/// least) `limit`: one minus the one-sided binomial p-value of the opposite. 0 to 1; near 0.5 means
/// that little is known either way; the two do not quite add to 1, because exact limits leave room.
/// "At most 0 %" and "at least 100 %" can never be shown by a sample and give 0; "at most 100 %"
/// and "at least 0 %" are always true and give 1.
double confidence_at_most(double percent, double effective_stones, double limit);
double confidence_at_least(double percent, double effective_stones, double limit);

/// Limits for the size at a percent: the sizes at which the interval for the percent smaller
/// crosses it (both ends read on the sample's own curve; Eaton, Moore & MacKenzie 2019). An end is
/// absent where the curve does not reach. Where the error of the size itself is known, it is
/// lognormal about the size instead.
struct SizeInterval {
  std::optional<Length> low;
  std::optional<Length> high;
};
SizeInterval size_interval(const MeasuredGradation& measured, double percent, double confidence);

/// As above by exact limits of the percent, which hold at least as often as is stated; for counts
/// on a grid, where the curve is taken for what was counted.
SizeInterval exact_size_interval(const MeasuredGradation& measured, double percent,
                                 double confidence);

/// Points of the curve with their pointwise limits, for drawing: at every point of the curve.
struct ConfidencePoint {
  Length size;
  double percent = 0;
  PercentInterval interval;
};
std::vector<ConfidencePoint> confidence_band(const MeasuredGradation& measured, double confidence);

/// The limits of the curve as curves, for whatever reads curves: the coarsest and the finest rock
/// that the sample leaves possible, point by point. The coarse one may end below 100 %.
struct LimitCurves {
  Gradation coarse;
  Gradation fine;
};
/// Problems as of Gradation::make.
Expected<LimitCurves> limit_curves(const MeasuredGradation& measured, double confidence);

}  // namespace proofstone
