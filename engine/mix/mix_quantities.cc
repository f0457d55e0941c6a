#include "engine/mix/mix_quantities.h"

#include "engine/hydraulics/water_weight.h"

namespace proofstone {

namespace {

using DescribedMixQuantities = TypedMethod<MixQuantitiesInputs, MixQuantitiesResult>;

DescribedMixQuantities build_mix_quantities() {
  MethodDescription about;
  about.id = "mix-quantities";
  about.title = "Quantities of a filled layer";
  about.purpose =
      "Rock and fill for a volume of filled rock in place: what to weigh in, to dig and to haul.";
  about.sources = {
      {"mass balance of rock, voids and fill", "V_f = η·n·V", SourceStanding::computed}};
  about.cautions = {
      "Pay by weight or by a measured layer: the voids depend on how they are measured."};
  about.group = MethodGroup::mix;
  DescribedMixQuantities method(std::move(about), &mix_quantities);
  method.required({"volume", "V", "volume of the layer in place"}, &MixQuantitiesInputs::volume,
                  unit::cubic_yard, AllowedRange::positive_to(1e8));
  method.defaulted({"voids", "n", "voids of the rock, share of its bulk volume"},
                   &MixQuantitiesInputs::voids, unit::number, {0.0, std::nullopt, 0.7});
  method.defaulted({"specific_gravity", "Gs", "specific gravity of the rock"},
                   &MixQuantitiesInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.defaulted({"filling", "η", "share of the voids that is filled"},
                   &MixQuantitiesInputs::filling, unit::number, AllowedRange::between(0, 1));
  method.defaulted({"fill_swell", "L", "loose over bank volume of the fill"},
                   &MixQuantitiesInputs::fill_swell, unit::number, AllowedRange::between(1, 2));
  method.defaulted({"fill_shrink", "C", "in place over bank volume of the fill"},
                   &MixQuantitiesInputs::fill_shrink, unit::number,
                   AllowedRange::between(0.5, 1.5));
  method.optional({"fill_density", "ρ_f", "dry density of the fill in place"},
                  &MixQuantitiesInputs::fill_density, unit::pound_mass_per_cubic_foot,
                  AllowedRange::between(40, 180), "the mass of the fill is left out");
  method.output({"rock_density", "ρ_r", "bulk density of the rock"},
                &MixQuantitiesResult::rock_density, unit::pound_mass_per_cubic_foot);
  method.output({"rock_mass", "M_r", "mass of the rock"}, &MixQuantitiesResult::rock_mass,
                unit::short_ton);
  method.output({"fill_in_place", "V_f", "fill in place"}, &MixQuantitiesResult::fill_in_place,
                unit::cubic_yard);
  method.output({"fill_bank", "", "fill in the ground"}, &MixQuantitiesResult::fill_bank,
                unit::cubic_yard);
  method.output({"fill_loose", "", "fill loose"}, &MixQuantitiesResult::fill_loose,
                unit::cubic_yard);
  method.output({"fill_mass", "M_f", "dry mass of the fill"}, &MixQuantitiesResult::fill_mass,
                unit::short_ton);
  method.output({"loose_ratio", "r", "loose fill to rock"}, &MixQuantitiesResult::loose_ratio,
                unit::number);
  method.output({"fill_share", "f", "fill, share of the summed loose volumes"},
                &MixQuantitiesResult::fill_share, unit::percent);
  method.output({"mix_density", "ρ", "dry density of the mix"}, &MixQuantitiesResult::mix_density,
                unit::pound_mass_per_cubic_foot);
  return method;
}

}  // namespace

Expected<MixQuantitiesResult> mix_quantities(const MixQuantitiesInputs& inputs, Steps& steps) {
  const double n = inputs.voids.number();
  const Volume V = inputs.volume;
  MixQuantitiesResult result;
  result.rock_density = inputs.specific_gravity.number() * (1 - n) * water_density;
  result.rock_mass =
      Mass::kilograms(result.rock_density.kilograms_per_cubic_meter() * V.cubic_meters());
  result.fill_in_place = inputs.filling.number() * n * V;
  result.fill_bank = result.fill_in_place / inputs.fill_shrink.number();
  result.fill_loose = inputs.fill_swell.number() * result.fill_bank;
  const double r = result.fill_loose / V;
  result.loose_ratio = Dimensionless::number(r);
  result.fill_share = Dimensionless::number(r / (1 + r));
  const Density of_fill = inputs.fill_density.value_or(Density{});
  result.fill_mass =
      Mass::kilograms(of_fill.kilograms_per_cubic_meter() * result.fill_in_place.cubic_meters());
  result.mix_density = result.rock_density + inputs.filling.number() * n * of_fill;
  steps.given("V", "volume of the layer in place", measure(V));
  steps.given("n", "voids of the rock", measure(n));
  steps.given("η", "share of the voids filled", measure(inputs.filling));
  steps.computed("ρ_r", "bulk density of the rock", "Gs·(1 − n)·62.4 lb/ft³",
                 measure(result.rock_density));
  steps.computed("M_r", "mass of the rock", "ρ_r·V", measure(result.rock_mass));
  steps.computed("V_f", "fill in place", "η·n·V", measure(result.fill_in_place));
  steps.computed("", "fill in the ground", "V_f/C", measure(result.fill_bank));
  steps.computed("", "fill loose", "V_f·L/C", measure(result.fill_loose));
  if (inputs.fill_density) {
    steps.computed("M_f", "dry mass of the fill", "ρ_f·V_f", measure(result.fill_mass));
  }
  return result;
}

const Method& mix_quantities_method() {
  static const DescribedMixQuantities method = build_mix_quantities();
  return method;
}

}  // namespace proofstone
