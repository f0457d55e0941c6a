#include "engine/mix/compressible_packing.h"

namespace proofstone {

namespace {

using DescribedCompressiblePacking =
    TypedMethod<CompressiblePackingInputs, CompressiblePackingResult>;

DescribedCompressiblePacking build_compressible_packing() {
  MethodDescription about;
  about.id = "compressible-packing";
  about.title = "Compressible packing of rock and fill";
  about.purpose =
      "How dense rock mixed with one fill packs, and by how much the fill forces the rock apart.";
  about.sources = {{"F. de Larrard, Concrete Mixture Proportioning (1999)",
                    "compressible packing model", SourceStanding::memory},
                   {"trade", "a dilation above 1.05 loses the contact of the rock",
                    SourceStanding::common_practice}};
  about.cautions = {
      "The model knows no placing of rock before fill: fill washed into rock that already lies "
      "does "
      "not force it apart.",
      "The author reports a mean error of 0.8 % for rounded and 1.8 % for crushed grains."};
  about.group = MethodGroup::mix;
  DescribedCompressiblePacking method(std::move(about), &rock_and_fill_packing);
  method.required({"rock_size", "d1", "size of the rock"}, &CompressiblePackingInputs::rock_size,
                  unit::inch, AllowedRange::positive_to(400), LengthUse::rock);
  method.required({"fill_size", "d2", "size of the fill"}, &CompressiblePackingInputs::fill_size,
                  unit::inch, AllowedRange::positive_to(400), LengthUse::rock);
  method.defaulted({"rock_density", "φ1", "solids share of the rock packed alone"},
                   &CompressiblePackingInputs::rock_density, unit::number,
                   AllowedRange::between(0.2, 0.8));
  method.defaulted({"fill_density", "φ2", "solids share of the fill packed alone"},
                   &CompressiblePackingInputs::fill_density, unit::number,
                   AllowedRange::between(0.2, 0.8));
  method.required({"fill_share", "y2", "fill, share of the volume of all solids"},
                  &CompressiblePackingInputs::fill_share, unit::number,
                  AllowedRange::between(0, 0.99));
  method.defaulted({"index", "K", "compaction: 4.1 poured, 4.5 rodded, 4.75 vibrated, 9 pressed"},
                   &CompressiblePackingInputs::index, unit::number, AllowedRange::between(4.1, 20));
  method.output({"loosening", "a", "loosening of the rock by the fill"},
                &CompressiblePackingResult::loosening_effect, unit::number);
  method.output({"wall", "b", "wall effect of the rock on the fill"},
                &CompressiblePackingResult::wall_effect, unit::number);
  method.output({"density", "Φ", "solids share of the mix"}, &CompressiblePackingResult::density,
                unit::number);
  method.output({"rock_solids", "", "solids of the rock, share of the mix"},
                &CompressiblePackingResult::rock_solids, unit::number);
  method.output({"dilation", "", "how far the rock is forced apart"},
                &CompressiblePackingResult::dilation, unit::number);
  return method;
}

}  // namespace

Expected<CompressiblePackingResult> rock_and_fill_packing(const CompressiblePackingInputs& inputs,
                                                          Steps& steps) {
  if (!(inputs.fill_size < inputs.rock_size)) {
    return Problem{"not-smaller", "The fill is not smaller than the rock.", "", "/fill_size",
                   "smaller than the rock"};
  }
  const double y2 = inputs.fill_share.number();
  const auto packing =
      compressible_packing({{inputs.rock_size, inputs.rock_density.number(), 1 - y2},
                            {inputs.fill_size, inputs.fill_density.number(), y2}},
                           inputs.index.number());
  if (!packing) return packing.problems();
  const double ratio = inputs.fill_size / inputs.rock_size;
  CompressiblePackingResult result;
  result.loosening_effect = Dimensionless::number(loosening(ratio));
  result.wall_effect = Dimensionless::number(wall_effect(ratio));
  result.density = Dimensionless::number(packing->density);
  result.rock_solids = Dimensionless::number(packing->density * (1 - y2));
  result.dilation =
      Dimensionless::number(dilation_index(inputs.rock_density.number(), packing->density, 1 - y2));
  steps.given_rock("d1", "size of the rock", inputs.rock_size);
  steps.given_rock("d2", "size of the fill", inputs.fill_size);
  steps.given("φ1", "solids share of the rock alone", measure(inputs.rock_density));
  steps.given("φ2", "solids share of the fill alone", measure(inputs.fill_density));
  steps.given("y2", "fill, share of the solids", measure(y2));
  steps.given("K", "compaction index", measure(inputs.index));
  steps.computed("a", "loosening", "√(1 − (1 − d2/d1)^1.02)", measure(result.loosening_effect));
  steps.computed("b", "wall effect", "1 − (1 − d2/d1)^1.5", measure(result.wall_effect));
  steps.computed("γ1", "virtual density, rock carrying",
                 "β1/[1 − (1 − a·β1/β2)·y2], β = φ(1 + 1/K)",
                 measure(packing->virtual_densities[0]));
  steps.computed("γ2", "virtual density, fill carrying", "β2/[1 − (1 − β2 + b·β2(1 − 1/β1))·y1]",
                 measure(packing->virtual_densities[1]));
  steps.computed("Φ", "solids share of the mix", "Σ (y/β)/(1/Φ − 1/γ) = K",
                 measure(result.density));
  steps.computed("", "how far the rock is forced apart", "φ1/[Φ·(1 − y2)]",
                 measure(result.dilation));
  return result;
}

const Method& rock_and_fill_packing_method() {
  static const DescribedCompressiblePacking method = build_compressible_packing();
  return method;
}

}  // namespace proofstone
