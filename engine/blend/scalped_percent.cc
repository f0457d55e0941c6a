#include "engine/blend/scalped_percent.h"

#include <algorithm>

namespace proofstone {

namespace {

using DescribedScalpedPercent = TypedMethod<ScalpedPercentInputs, ScalpedPercentResult>;

DescribedScalpedPercent build_scalped_percent() {
  MethodDescription about;
  about.id = "scalped-percent";
  about.title = "Scalping";
  about.purpose = "A gradation after its oversize was taken out, and what is lost by it.";
  about.sources = {{"mass balance of a gradation", "P' = 100·P/P_s", SourceStanding::computed}};
  about.group = MethodGroup::mix;
  DescribedScalpedPercent method(std::move(about), &scalped_percent);
  method.required({"passing", "P", "percent smaller at the size asked for"},
                  &ScalpedPercentInputs::passing, unit::percent, AllowedRange::between(0, 100));
  method.required({"passing_at_scalp", "P_s", "percent smaller at the size of scalping"},
                  &ScalpedPercentInputs::passing_at_scalp, unit::percent,
                  AllowedRange::positive_to(100));
  method.output({"percent", "P'", "percent smaller afterwards"}, &ScalpedPercentResult::percent,
                unit::percent);
  method.output({"loss", "", "share of the mass taken out"}, &ScalpedPercentResult::loss,
                unit::percent);
  return method;
}

}  // namespace

Expected<ScalpedPercentResult> scalped_percent(const ScalpedPercentInputs& inputs, Steps& steps) {
  ScalpedPercentResult result;
  result.percent = Dimensionless::number(
      std::min(1.0, inputs.passing.number() / inputs.passing_at_scalp.number()));
  result.loss = Dimensionless::number(1 - inputs.passing_at_scalp.number());
  steps.given("P", "percent smaller before", measure(inputs.passing));
  steps.given("P_s", "percent smaller at the size of scalping", measure(inputs.passing_at_scalp));
  steps.computed("P'", "percent smaller afterwards", "100·P/P_s", measure(result.percent));
  steps.computed("", "taken out", "100 − P_s", measure(result.loss));
  return result;
}

const Method& scalped_percent_method() {
  static const DescribedScalpedPercent method = build_scalped_percent();
  return method;
}

}  // namespace proofstone
