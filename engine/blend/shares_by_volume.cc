#include "engine/blend/shares_by_volume.h"

#include "engine/blend/blend_shares.h"

namespace proofstone {

namespace {

using DescribedSharesByVolume = TypedMethod<SharesByVolumeInputs, SharesByVolumeResult>;

DescribedSharesByVolume build_shares_by_volume() {
  MethodDescription about;
  about.id = "shares-by-volume";
  about.title = "Shares of mass as shares of volume";
  about.purpose =
      "Shares by volume of a blend whose materials differ in specific gravity by more than about "
      "0.2, "
      "and its specific gravity.";
  about.sources = {
      {"mass balance; Asphalt Institute type rule", "1/G = Σ f/G", SourceStanding::memory}};
  about.group = MethodGroup::mix;
  DescribedSharesByVolume method(std::move(about), &shares_by_volume);
  method.required_list({"shares", "f", "share of each material, by mass"},
                       &SharesByVolumeInputs::shares, unit::percent, AllowedRange::between(0, 100));
  method.required_list({"gravities", "G", "specific gravity of each"},
                       &SharesByVolumeInputs::gravities, unit::number,
                       AllowedRange::between(0.5, 8));
  method.output({"first_share", "v1", "first, share of the volume"},
                &SharesByVolumeResult::first_share, unit::percent);
  method.output({"last_share", "", "last, share of the volume"}, &SharesByVolumeResult::last_share,
                unit::percent);
  method.output({"gravity", "G", "specific gravity of the blend"}, &SharesByVolumeResult::gravity,
                unit::number);
  return method;
}

}  // namespace

Expected<SharesByVolumeResult> shares_by_volume(const SharesByVolumeInputs& inputs, Steps& steps) {
  std::vector<double> shares;
  for (const Dimensionless share : inputs.shares) shares.push_back(share.number());
  if (auto problems = problems_of_shares(shares); !problems.empty()) return problems;
  if (inputs.gravities.size() != shares.size()) {
    return Problem{"lists-differ", "The lists differ in length.", "", "/gravities",
                   "one specific gravity for each share"};
  }
  double volume = 0;
  for (std::size_t i = 0; i < shares.size(); ++i) {
    volume += shares[i] / inputs.gravities[i].number();
    steps.given("f", "share of the mass", measure(shares[i]));
    steps.given("G", "its specific gravity", measure(inputs.gravities[i]));
  }
  SharesByVolumeResult result;
  result.first_share =
      Dimensionless::number(shares.front() / inputs.gravities.front().number() / volume);
  result.last_share =
      Dimensionless::number(shares.back() / inputs.gravities.back().number() / volume);
  result.gravity = Dimensionless::number(1 / volume);
  steps.computed("v1", "first, share of the volume", "(f/G)/Σ(f/G)", measure(result.first_share));
  steps.computed("G", "specific gravity of the blend", "1/Σ(f/G)", measure(result.gravity));
  return result;
}

const Method& shares_by_volume_method() {
  static const DescribedSharesByVolume method = build_shares_by_volume();
  return method;
}

}  // namespace proofstone
