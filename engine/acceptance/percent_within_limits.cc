#include "engine/acceptance/percent_within_limits.h"

#include <algorithm>
#include <boost/math/special_functions/beta.hpp>
#include <cmath>

#include "engine/acceptance/mean_and_deviation.h"
#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

using DescribedPercentWithinLimits =
    TypedMethod<PercentWithinLimitsInputs, PercentWithinLimitsResult>;
using InDoubles = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

constexpr double whole_percent_rounding = 1e-9;

Source variables_source() {
  return {"FAA AC 150/5370-10", "Section 110, percentage of material within limits",
          SourceStanding::memory};
}

DescribedPercentWithinLimits build_percent_within_limits() {
  MethodDescription about;
  about.id = "percent-within-limits";
  about.title = "Percent within limits of a lot";
  about.purpose =
      "What share of a lot lies inside limits, from one value of each of a few loads, such as D50 "
      "or "
      "the percent smaller than a size.";
  about.group = MethodGroup::evidence;
  about.sources = {variables_source(),
                   {"AASHTO R 9", "variables acceptance plans", SourceStanding::memory}};
  about.cautions = {
      "Holds where the values of loads are near to normal and the loads were picked at random.",
      "Printed tables give whole percents, rounded up; both values are given."};
  DescribedPercentWithinLimits method(std::move(about), &percent_within_limits);
  method.required_list({"values", "x", "one value of each load, in any one unit"},
                       &PercentWithinLimitsInputs::values, unit::number, AllowedRange::any());
  method.optional({"lower_limit", "L", "lower limit, in the same unit"},
                  &PercentWithinLimitsInputs::lower_limit, unit::number, AllowedRange::any(),
                  "no lower limit");
  method.optional({"upper_limit", "U", "upper limit, in the same unit"},
                  &PercentWithinLimitsInputs::upper_limit, unit::number, AllowedRange::any(),
                  "no upper limit");
  method.output({"mean", "x̄", "mean"}, &PercentWithinLimitsResult::mean, unit::number);
  method.output({"standard_deviation", "s", "standard deviation, n − 1"},
                &PercentWithinLimitsResult::standard_deviation, unit::number);
  method.output({"percent_within", "PWL", "percent of the lot within the limits"},
                &PercentWithinLimitsResult::percent_within, unit::percent);
  method.output({"table_percent", "PWL", "as printed tables give it, each side rounded up"},
                &PercentWithinLimitsResult::table_percent, unit::percent);
  return method;
}

Problems problems_of(const PercentWithinLimitsInputs& in) {
  if (!in.lower_limit && !in.upper_limit) {
    return {{"no-limit", "Without a limit there is nothing to lie within.", "", "/lower_limit",
             "a lower limit, an upper limit, or both"}};
  }
  if (in.lower_limit && in.upper_limit && !(*in.upper_limit > *in.lower_limit)) {
    return {{"limits-reversed", "The upper limit is not above the lower one.", "", "/upper_limit",
             "more than the lower limit"}};
  }
  return {};
}

double whole_percent(double share) { return std::ceil(100 * share - whole_percent_rounding) / 100; }

}  // namespace

double share_within(double quality_index, double values) {
  const double y = std::max(0.0, 0.5 - quality_index * std::sqrt(values) / (2 * (values - 1)));
  if (y >= 1) return 0;
  return 1 - boost::math::ibeta(values / 2 - 1, values / 2 - 1, y, InDoubles());
}

Expected<PercentWithinLimitsResult> percent_within_limits(const PercentWithinLimitsInputs& in,
                                                          Steps& steps) {
  auto problems = problems_of(in);
  if (!problems.empty()) return problems;
  const auto spread = mean_and_deviation(numbers_of(in.values), 3, "/values");
  if (!spread) return spread.problems();
  if (!(spread->deviation > 0)) {
    return Problem{"no-spread", "Values that do not differ say nothing of the spread of the lot.",
                   "", "/values", "values as measured, not rounded to the same number"};
  }
  const auto n = static_cast<double>(in.values.size());
  const auto source = variables_source().sentence();
  steps.computed("x̄", "mean", "Σx/n", measure(spread->mean));
  steps.computed("s", "standard deviation", "√[Σ(x − x̄)²/(n − 1)]", measure(spread->deviation));
  double share = 1;
  double table = 1;
  const auto one_side = [&](const char* symbol, const char* formula, double quality_index) {
    const double within = share_within(quality_index, n);
    share += within - 1;
    table += whole_percent(within) - 1;
    steps.computed(symbol, "quality index", formula, measure(quality_index), source);
    steps.computed("P", "percent on the right side of that limit",
                   "100·[1 − I_y(n/2 − 1, n/2 − 1)], y = ½ − Q·√n/(2·(n − 1)), not below 0",
                   measure(100 * within), source);
  };
  if (in.lower_limit) {
    one_side("Q_L", "(x̄ − L)/s", (spread->mean - in.lower_limit->number()) / spread->deviation);
  }
  if (in.upper_limit) {
    one_side("Q_U", "(U − x̄)/s", (in.upper_limit->number() - spread->mean) / spread->deviation);
  }
  steps.computed("PWL", "percent within limits", "P_L + P_U − 100", measure(100 * share), source);
  return PercentWithinLimitsResult{
      Dimensionless::number(spread->mean), Dimensionless::number(spread->deviation),
      Dimensionless::number(std::max(0.0, share)), Dimensionless::number(std::max(0.0, table))};
}

const Method& percent_within_limits_method() {
  static const DescribedPercentWithinLimits method = build_percent_within_limits();
  return method;
}

}  // namespace proofstone
