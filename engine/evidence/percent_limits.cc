#include "engine/evidence/percent_limits.h"

#include <fmt/format.h>

#include "engine/evidence/confidence.h"
#include "engine/evidence/evidence_sources.h"
#include "engine/method/typed_method.h"

namespace proofstone {
namespace {

TypedMethod<PercentLimitsInputs, PercentLimitsResult> build_percent_limits() {
  MethodDescription about;
  about.id = "percent-limits";
  about.title = "Confidence limits of a percent smaller";
  about.purpose =
      "How far the true percent smaller can lie from a count: x of n stones were smaller than a "
      "size. Also how strongly the count shows that the percent is at most, or at least, a limit.";
  about.group = MethodGroup::evidence;
  about.sources = {clopper_pearson_source()};
  about.cautions = {
      "Holds for stones picked independently, as on a grid wider than the largest stone. Stones of "
      "one load are alike: spread the count over loads.",
      "What an observer adds by choosing or misreading stones is not in these limits."};
  TypedMethod<PercentLimitsInputs, PercentLimitsResult> method(std::move(about), &percent_limits);
  method.required({"smaller", "x", "stones smaller than the size"}, &PercentLimitsInputs::smaller,
                  unit::number, AllowedRange::between(0, 1e6));
  method.required({"stones", "n", "stones in all"}, &PercentLimitsInputs::stones, unit::number,
                  AllowedRange::positive_to(1e6));
  method.defaulted({"confidence", "1 − α", "confidence of the two-sided limits"},
                   &PercentLimitsInputs::confidence, unit::percent,
                   AllowedRange::between(50, 99.99));
  method.defaulted({"limit", "p", "percent smaller asked about"}, &PercentLimitsInputs::limit,
                   unit::percent, AllowedRange::between(0, 100));
  method.output({"low", "L", "lower limit of the percent smaller"}, &PercentLimitsResult::low,
                unit::percent);
  method.output({"high", "U", "upper limit of the percent smaller"}, &PercentLimitsResult::high,
                unit::percent);
  method.output({"confidence_at_most", "C≤", "that the percent smaller is at most p"},
                &PercentLimitsResult::confidence_at_most, unit::percent);
  method.output({"confidence_at_least", "C≥", "that the percent smaller is at least p"},
                &PercentLimitsResult::confidence_at_least, unit::percent);
  return method;
}

}  // namespace

Expected<PercentLimitsResult> percent_limits(const PercentLimitsInputs& in, Steps& steps) {
  const double x = in.smaller.number();
  const double n = in.stones.number();
  if (x > n) {
    return Problem{"more-than-all", fmt::format("{:g} of {:g} stones cannot be smaller.", x, n), "",
                   "/smaller", "at most the number of stones in all"};
  }
  const double percent = 100 * x / n;
  const auto limits = percent_smaller_interval(percent, n, in.confidence.number());
  const double limit = in.limit.in(unit::percent);
  const double at_most = confidence_at_most(percent, n, limit);
  const double at_least = confidence_at_least(percent, n, limit);
  const auto source = clopper_pearson_source().sentence();
  steps.computed("F", "percent smaller in the count", "100·x/n", measure(percent));
  steps.computed("L", "lower limit, percent", "100·B⁻¹(α/2; x, n − x + 1)", measure(limits.low),
                 source);
  steps.computed("U", "upper limit, percent", "100·B⁻¹(1 − α/2; x + 1, n − x)",
                 measure(limits.high), source);
  steps.computed("C≤", "confidence that the percent smaller is at most p",
                 "1 − P(at most x of n smaller | p)", measure(at_most), source);
  steps.computed("C≥", "confidence that the percent smaller is at least p",
                 "1 − P(at least x of n smaller | p)", measure(at_least), source);
  return PercentLimitsResult{Dimensionless::of(limits.low, unit::percent),
                             Dimensionless::of(limits.high, unit::percent),
                             Dimensionless::number(at_most), Dimensionless::number(at_least)};
}

const Method& percent_limits_method() {
  static const auto method = build_percent_limits();
  return method;
}

}  // namespace proofstone
