#include "engine/mix/rock_voids.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedRockVoids = TypedMethod<RockVoidsInputs, RockVoidsResult>;

struct Range {
  double low = 0;
  double high = 0;
};

Range tabulated(RockLay lay) {
  switch (lay) {
    case RockLay::smooth_two_layers:
      return {0.38, 0.38};
    case RockLay::rough_two_layers:
    case RockLay::graded_riprap:
      return {0.37, 0.37};
    case RockLay::rough_many_layers:
      return {0.40, 0.40};
    case RockLay::rounded_cobble:
      return {0.38, 0.42};
    case RockLay::angular_dumped:
      return {0.42, 0.50};
    case RockLay::by_uniformity:
      break;
  }
  return {};
}

DescribedRockVoids build_rock_voids() {
  MethodDescription about;
  about.id = "rock-voids";
  about.title = "Voids of rock";
  about.purpose = "The share of voids to take for rock or gravel that was not measured.";
  about.sources = {
      {"US Army Shore Protection Manual (1984)", "Table 7-13: quarrystone", SourceStanding::memory},
      {"trade", "cobble and dumped rock", SourceStanding::common_practice},
      {"Vukovic & Soro (1992)", "n = 0.255·(1 + 0.83^Cu)", SourceStanding::memory}};
  about.cautions = {
      "Indicative: the voids of a layer depend on where its top and bottom are measured. Measure "
      "with "
      "a box and water, or by weight, before paying by volume."};
  about.group = MethodGroup::mix;
  DescribedRockVoids method(std::move(about), &rock_voids);
  method.choice({"lay", "", "how it lies"}, &RockVoidsInputs::lay,
                {ChoiceOption<RockLay>{RockLay::smooth_two_layers, "smooth-two-layers",
                                       "smooth quarrystone, random, two layers"},
                 {RockLay::rough_two_layers, "rough-two-layers", "rough quarrystone, two layers"},
                 {RockLay::rough_many_layers, "rough-many-layers",
                  "rough quarrystone, more than three layers"},
                 {RockLay::graded_riprap, "graded-riprap", "graded riprap"},
                 {RockLay::rounded_cobble, "rounded-cobble", "uniform rounded cobble"},
                 {RockLay::angular_dumped, "angular-dumped", "uniform angular rock, dumped"},
                 {RockLay::by_uniformity, "by-uniformity", "sand or gravel by its uniformity"}});
  method.optional({"uniformity", "Cu", "D60/D10"}, &RockVoidsInputs::uniformity, unit::number,
                  AllowedRange::between(1, 200), "not used but with by-uniformity");
  method.output({"least", "", "least share of voids"}, &RockVoidsResult::least, unit::number);
  method.output({"voids", "n", "share of voids, middle of the range"}, &RockVoidsResult::voids,
                unit::number);
  method.output({"most", "", "largest share of voids"}, &RockVoidsResult::most, unit::number);
  return method;
}

}  // namespace

Expected<RockVoidsResult> rock_voids(const RockVoidsInputs& inputs, Steps& steps) {
  Range range = tabulated(inputs.lay);
  if (inputs.lay == RockLay::by_uniformity) {
    if (!inputs.uniformity) {
      return Problem{"missing-field", "The uniformity is missing.", "", "/uniformity",
                     "D60/D10, 1 or more"};
    }
    const double n = 0.255 * (1 + std::pow(0.83, inputs.uniformity->number()));
    range = {n, n};
    steps.given("Cu", "uniformity", measure(*inputs.uniformity));
    steps.computed("n", "share of voids", "0.255·(1 + 0.83^Cu)", measure(n));
  } else {
    steps.given("n", "share of voids, middle of the range", measure((range.low + range.high) / 2),
                "table");
  }
  RockVoidsResult result;
  result.least = Dimensionless::number(range.low);
  result.voids = Dimensionless::number((range.low + range.high) / 2);
  result.most = Dimensionless::number(range.high);
  return result;
}

const Method& rock_voids_method() {
  static const DescribedRockVoids method = build_rock_voids();
  return method;
}

}  // namespace proofstone
