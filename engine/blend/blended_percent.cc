#include "engine/blend/blended_percent.h"

#include "engine/blend/blend_shares.h"

namespace proofstone {

namespace {

using DescribedBlendedPercent = TypedMethod<BlendedPercentInputs, BlendedPercentResult>;

DescribedBlendedPercent build_blended_percent() {
  MethodDescription about;
  about.id = "blended-percent";
  about.title = "Blend at one sieve";
  about.purpose =
      "Percent smaller of a blend at one size, from that of each material and its share.";
  about.sources = {{"mass balance of gradations", "P = Σ f·P", SourceStanding::computed}};
  about.group = MethodGroup::mix;
  DescribedBlendedPercent method(std::move(about), &blended_percent);
  method.required_list({"shares", "f", "share of each material, by mass"},
                       &BlendedPercentInputs::shares, unit::percent,
                       AllowedRange::between(0, 1000));
  method.required_list({"percents", "P", "percent smaller of each material"},
                       &BlendedPercentInputs::percents, unit::percent,
                       AllowedRange::between(0, 100));
  method.choice({"partial", "", "shares that are not 100 % together"},
                &BlendedPercentInputs::partial,
                {ChoiceOption<PartialShares>{PartialShares::refuse, "refuse", "are refused"},
                 {PartialShares::scale, "scale", "are scaled to 100 %"}});
  method.output({"percent", "P", "percent smaller of the blend"}, &BlendedPercentResult::percent,
                unit::percent);
  method.output({"first_share", "f1", "share of the first, as used"},
                &BlendedPercentResult::first_share, unit::percent);
  return method;
}

}  // namespace

Expected<BlendedPercentResult> blended_percent(const BlendedPercentInputs& inputs, Steps& steps) {
  std::vector<double> shares;
  double sum = 0;
  for (const Dimensionless share : inputs.shares) {
    shares.push_back(share.number());
    sum += share.number();
  }
  if (inputs.percents.size() != shares.size()) {
    return Problem{"lists-differ", "The lists differ in length.", "", "/percents",
                   "one percent for each share"};
  }
  if (inputs.partial == PartialShares::scale && sum > 0) {
    for (double& share : shares) share /= sum;
  }
  if (auto problems = problems_of_shares(shares); !problems.empty()) return problems;
  double percent = 0;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    percent += shares[i] * inputs.percents[i].number();
    steps.given("f", "share", measure(shares[i]));
    steps.given("P", "percent smaller of it", measure(inputs.percents[i]));
  }
  BlendedPercentResult result;
  result.percent = Dimensionless::number(percent);
  result.first_share = Dimensionless::number(shares.front());
  steps.computed("P", "percent smaller of the blend", "Σ f·P", measure(result.percent));
  return result;
}

const Method& blended_percent_method() {
  static const DescribedBlendedPercent method = build_blended_percent();
  return method;
}

}  // namespace proofstone
