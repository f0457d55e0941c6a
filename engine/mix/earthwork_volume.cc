#include "engine/mix/earthwork_volume.h"

namespace proofstone {

namespace {

using DescribedEarthworkVolume = TypedMethod<EarthworkVolumeInputs, EarthworkVolumeResult>;

DescribedEarthworkVolume build_earthwork_volume() {
  MethodDescription about;
  about.id = "earthwork-volume";
  about.title = "Earth loose, in the ground and compacted";
  about.purpose =
      "One amount of earth as bank, loose and compacted volume: what to dig, to haul and to fill.";
  about.sources = {
      {"Army table of earthwork factors, sand: 100 yd³ in place, 111 loose, 95 compacted",
       "table row", SourceStanding::published},
      {"US Army FM 5-434, table of conversion factors", "common earth, clay, blasted rock",
       SourceStanding::memory}};
  about.cautions = {
      "Factors are usual ones: the soil at hand is known by weighing it in each state."};
  about.group = MethodGroup::mix;
  DescribedEarthworkVolume method(std::move(about), &earthwork_volume);
  method.choice({"earth", "", "what it is"}, &EarthworkVolumeInputs::earth,
                {ChoiceOption<EarthKind>{EarthKind::sand, "sand", "sand"},
                 {EarthKind::common_earth, "common-earth", "common earth, loam"},
                 {EarthKind::clay, "clay", "clay"},
                 {EarthKind::blasted_rock, "blasted-rock", "blasted rock"}});
  method.required({"volume", "V", "volume as measured"}, &EarthworkVolumeInputs::volume,
                  unit::cubic_yard, AllowedRange::positive_to(1e9));
  method.choice({"state", "", "how it was measured"}, &EarthworkVolumeInputs::state,
                {ChoiceOption<EarthState>{EarthState::bank, "bank", "in the ground"},
                 {EarthState::loose, "loose", "in the truck or pile"},
                 {EarthState::compacted, "compacted", "in the fill"}});
  const auto density = [&method](Naming name,
                                 std::optional<Density> EarthworkVolumeInputs::* member) {
    method.optional(name, member, unit::pound_mass_per_cubic_foot, AllowedRange::positive_to(250),
                    "the usual factor");
  };
  density({"bank_density", "ρ_b", "dry density in the ground"},
          &EarthworkVolumeInputs::bank_density);
  density({"loose_density", "ρ_l", "dry density loose"}, &EarthworkVolumeInputs::loose_density);
  density({"compacted_density", "ρ_c", "dry density in the fill"},
          &EarthworkVolumeInputs::compacted_density);
  method.output({"bank", "V_b", "in the ground"}, &EarthworkVolumeResult::bank, unit::cubic_yard);
  method.output({"loose", "V_l", "loose"}, &EarthworkVolumeResult::loose, unit::cubic_yard);
  method.output({"compacted", "V_c", "in the fill"}, &EarthworkVolumeResult::compacted,
                unit::cubic_yard);
  method.output({"swell", "", "growth from the ground to loose"}, &EarthworkVolumeResult::swell,
                unit::percent);
  method.output({"in_place_over_loose", "c", "fill in place over loose"},
                &EarthworkVolumeResult::in_place_over_loose, unit::number);
  return method;
}

}  // namespace

EarthFactors earth_factors(EarthKind kind) {
  switch (kind) {
    case EarthKind::sand:
      return {1.11, 0.95};
    case EarthKind::common_earth:
      return {1.25, 0.90};
    case EarthKind::clay:
      return {1.43, 0.90};
    case EarthKind::blasted_rock:
      return {1.50, 1.30};
  }
  return {};
}

Expected<EarthworkVolumeResult> earthwork_volume(const EarthworkVolumeInputs& inputs,
                                                 Steps& steps) {
  auto factors = earth_factors(inputs.earth);
  if (inputs.bank_density && inputs.loose_density) {
    factors.loose = *inputs.bank_density / *inputs.loose_density;
  }
  if (inputs.bank_density && inputs.compacted_density) {
    factors.compacted = *inputs.bank_density / *inputs.compacted_density;
  }
  double over_bank = 1;
  if (inputs.state == EarthState::loose) over_bank = factors.loose;
  if (inputs.state == EarthState::compacted) over_bank = factors.compacted;
  EarthworkVolumeResult result;
  result.bank = inputs.volume / over_bank;
  result.loose = factors.loose * result.bank;
  result.compacted = factors.compacted * result.bank;
  result.swell = Dimensionless::number(factors.loose - 1);
  result.in_place_over_loose = Dimensionless::number(factors.in_place_over_loose());
  steps.given("V", "volume as measured", measure(inputs.volume));
  steps.given("L", "loose over bank volume", measure(factors.loose));
  steps.given("C", "compacted over bank volume", measure(factors.compacted));
  steps.computed("V_b", "in the ground", "V over its factor", measure(result.bank));
  steps.computed("V_l", "loose", "V_b·L", measure(result.loose));
  steps.computed("V_c", "in the fill", "V_b·C", measure(result.compacted));
  steps.computed("c", "in place over loose", "C/L", measure(result.in_place_over_loose));
  return result;
}

const Method& earthwork_volume_method() {
  static const DescribedEarthworkVolume method = build_earthwork_volume();
  return method;
}

}  // namespace proofstone
