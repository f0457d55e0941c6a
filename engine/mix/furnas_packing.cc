#include "engine/mix/furnas_packing.h"

namespace proofstone {

namespace {

using DescribedFurnasPacking = TypedMethod<FurnasPackingInputs, FurnasPackingResult>;

DescribedFurnasPacking build_furnas_packing() {
  MethodDescription about;
  about.id = "furnas-packing";
  about.title = "Furnas ideal packing";
  about.purpose =
      "The densest mix of sizes far apart, each filling the voids of the coarser ones; a bound "
      "that "
      "no real mix reaches.";
  about.sources = {{"C. C. Furnas, Industrial and Engineering Chemistry (1931)",
                    "ideal mixtures of sizes far apart", SourceStanding::memory}};
  about.cautions = {"No disturbance between sizes: finer grains than about 1/50 of the coarser."};
  about.group = MethodGroup::mix;
  DescribedFurnasPacking method(std::move(about), &furnas_packing);
  method.required_list({"densities", "φ", "solids share packed alone, from coarse to fine"},
                       &FurnasPackingInputs::densities, unit::number, {0.0, std::nullopt, 0.99});
  method.output({"density", "Φ", "solids share of the densest mix"}, &FurnasPackingResult::density,
                unit::number);
  method.output({"coarsest_share", "y1", "coarsest, share of the solids"},
                &FurnasPackingResult::coarsest_share, unit::number);
  method.output({"finest_share", "", "finest, share of the solids"},
                &FurnasPackingResult::finest_share, unit::number);
  return method;
}

}  // namespace

Expected<FurnasPackingResult> furnas_packing(const FurnasPackingInputs& inputs, Steps& steps) {
  double density = 0;
  double voids = 1;
  double last = 0;
  for (const Dimensionless packed : inputs.densities) {
    last = voids * packed.number();
    density += last;
    voids *= 1 - packed.number();
    steps.given("φ", "solids share packed alone", measure(packed));
  }
  if (inputs.densities.empty()) {
    return Problem{"empty", "There is nothing to pack.", "", "/densities", "at least one density"};
  }
  FurnasPackingResult result;
  result.density = Dimensionless::number(density);
  result.coarsest_share = inputs.densities.front() / density;
  result.finest_share = Dimensionless::number(last / density);
  steps.computed("Φ", "solids share of the densest mix", "φ1 + (1 − φ1)·φ2 + …",
                 measure(result.density));
  steps.computed("y1", "coarsest, share of the solids", "φ1/Φ", measure(result.coarsest_share));
  return result;
}

const Method& furnas_packing_method() {
  static const DescribedFurnasPacking method = build_furnas_packing();
  return method;
}

}  // namespace proofstone
