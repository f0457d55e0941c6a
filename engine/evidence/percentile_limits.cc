#include "engine/evidence/percentile_limits.h"

#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/evidence/count_to_mass.h"
#include "engine/evidence/evidence_sources.h"
#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

TypedMethod<PercentileLimitsInputs, PercentileLimitsResult> build_percentile_limits() {
  MethodDescription about;
  about.id = "percentile-limits";
  about.title = "Confidence limits of a size at a percent";
  about.purpose =
      "How far the true D50 (or the size at any percent) can lie from that of a stone count on a "
      "grid.";
  about.group = MethodGroup::evidence;
  about.sources = {percentile_limits_source()};
  about.cautions = {
      "Both limits are read on the sample's own curve: where the curve is coarse, so are they.",
      "What an observer adds by choosing or misreading stones is not in these limits."};
  TypedMethod<PercentileLimitsInputs, PercentileLimitsResult> method(std::move(about),
                                                                     &percentile_limits);
  method.required_list({"edges", "D", "sizes that bound the bins, from small to large"},
                       &PercentileLimitsInputs::edges, unit::millimeter,
                       AllowedRange::between(0, 5000), LengthUse::rock);
  method.required_list({"counts", "n", "stones in each bin, picked on a grid"},
                       &PercentileLimitsInputs::counts, unit::number,
                       AllowedRange::between(0, 1e6));
  method.defaulted({"percent", "p", "percent smaller"}, &PercentileLimitsInputs::percent,
                   unit::percent, AllowedRange::between(0.01, 99.99));
  method.defaulted({"confidence", "1 − α", "confidence of the two limits together"},
                   &PercentileLimitsInputs::confidence, unit::percent,
                   AllowedRange::between(50, 99.99));
  method.choice(
      {"limits", "", "how the limits of the percent are found"}, &PercentileLimitsInputs::limits,
      {{PercentLimitsBy::exact_binomial, "exact-binomial", "tails of the binomial distribution"},
       {PercentLimitsBy::normal_approximation, "normal-approximation", "p ± z·√(p(1 − p)/n)"}});
  method.output({"size", "Dp", "size at the percent"}, &PercentileLimitsResult::size,
                unit::millimeter, LengthUse::rock);
  method.output({"low", "Dp low", "its lower limit"}, &PercentileLimitsResult::low,
                unit::millimeter, LengthUse::rock);
  method.output({"high", "Dp high", "its upper limit"}, &PercentileLimitsResult::high,
                unit::millimeter, LengthUse::rock);
  return method;
}

SizeInterval by_normal_approximation(const MeasuredGradation& measured, double percent,
                                     double confidence, Steps& steps) {
  const double p = percent / 100;
  const double z = normal_quantile(1 - (1 - confidence) / 2);
  const double half_width = 100 * z * std::sqrt(p * (1 - p) / measured.effective_stones);
  steps.computed("p low", "lower limit of the percent", "p − z·√(p(1 − p)/n)",
                 measure(percent - half_width), percentile_limits_source().sentence());
  steps.computed("p high", "upper limit of the percent", "p + z·√(p(1 − p)/n)",
                 measure(percent + half_width), percentile_limits_source().sentence());
  SizeInterval interval;
  if (percent - half_width > 0) {
    if (const auto low = measured.curve.size_at(percent - half_width)) interval.low = *low;
  }
  if (percent + half_width < 100) {
    if (const auto high = measured.curve.size_at(percent + half_width)) interval.high = *high;
  }
  return interval;
}

}  // namespace

Expected<PercentileLimitsResult> percentile_limits(const PercentileLimitsInputs& in, Steps& steps) {
  const auto bins = bins_of(in.edges, in.counts);
  if (!bins) return bins.problems();
  const auto measured = gradation_from_bins(*bins, StonePicking::grid);
  if (!measured) return measured.problems();
  steps.append(measured->steps);
  const double percent = in.percent.in(unit::percent);
  const auto size = measured->curve.size_at(percent);
  if (!size) return located_under(size.problems(), "/percent");
  const auto interval =
      in.limits == PercentLimitsBy::exact_binomial
          ? exact_size_interval(*measured, percent, in.confidence.number())
          : by_normal_approximation(*measured, percent, in.confidence.number(), steps);
  if (!interval.low || !interval.high) {
    return Problem{"curve-does-not-reach",
                   "The curve ends before the limits of the percent do: too few stones.", "",
                   "/counts", "more stones, or a lower confidence"};
  }
  const auto source = percentile_limits_source().sentence();
  steps.computed_rock("Dp", "size at the percent", "read on the curve", *size);
  steps.computed_rock("Dp low", "lower limit", "read on the curve where P(at most n·F) = α/2",
                      *interval.low, source);
  steps.computed_rock("Dp high", "upper limit", "read on the curve where P(at least n·F) = α/2",
                      *interval.high, source);
  return PercentileLimitsResult{*size, *interval.low, *interval.high};
}

const Method& percentile_limits_method() {
  static const auto method = build_percentile_limits();
  return method;
}

}  // namespace proofstone
