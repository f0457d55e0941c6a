#include "engine/sizing/reservoir_wave_rock.h"

#include <cmath>

#include "engine/rock/size_and_mass.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {
namespace {

using DescribedReservoirWaveRock =
    TypedSizingMethod<ReservoirWaveRockInputs, ReservoirWaveRockResult>;

const char* const tr69 = "SCS TR-69 (1983) (from memory; confirm)";

std::variant<ReservoirWaveRockInputs, NotApplicable> reservoir_wave_rock_from_zone(
    const ZoneSetting& zone) {
  ReservoirWaveRockInputs in;
  if (zone.stated.wave_height) in.wave_height = *zone.stated.wave_height;
  in.slope = zone.bank_angle;
  in.specific_gravity = zone.rock.specific_gravity;
  return in;
}

DescribedReservoirWaveRock build_reservoir_wave_rock() {
  MethodDescription about;
  about.id = "reservoir-wave-rock";
  about.title = "SCS reservoir slope equation (TR-69)";
  about.purpose =
      "Median mass of riprap on the face of a dam or the shore of a reservoir, from the "
      "significant wave.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"SCS Technical Release 69, Riprap for Slope Protection Against Wave Action (1983)",
       "title and scope seen; equation from memory", SourceStanding::memory}};
  about.cautions = {"For deep-water waves on dam faces and reservoir shores; no sea coast.",
                    "At dams, nothing here settles their safety."};
  DescribedReservoirWaveRock method(about, &reservoir_wave_rock, &reservoir_wave_rock_from_zone,
                                    [](const ReservoirWaveRockResult& result) {
                                      RequiredSize required{50, result.d50};
                                      required.by_mass = true;
                                      return required;
                                    },
                                    {ZonePlace::shore});
  method.required({"wave_height", "Hs", "significant wave height"},
                  &ReservoirWaveRockInputs::wave_height, unit::foot, AllowedRange::positive_to(60));
  method.required({"slope", "α", "angle of the slope"}, &ReservoirWaveRockInputs::slope,
                  unit::degree, AllowedRange::positive_to(60));
  method.defaulted({"specific_gravity", "Gs", "specific gravity of the rock"},
                   &ReservoirWaveRockInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.output({"median_mass", "W50", "required median mass"},
                &ReservoirWaveRockResult::median_mass, unit::pound);
  method.output({"d50", "D50", "sphere of the median mass"}, &ReservoirWaveRockResult::d50,
                unit::foot, LengthUse::rock);
  return method;
}

}  // namespace

Expected<ReservoirWaveRockResult> reservoir_wave_rock(const ReservoirWaveRockInputs& inputs,
                                                      Steps& steps) {
  const double Hs = inputs.wave_height.feet();
  const double Gs = inputs.specific_gravity.number();
  const double cot = 1 / std::tan(inputs.slope.radians());
  ReservoirWaveRockResult result;
  result.median_mass = Mass::pounds(19.5 * Gs * Hs * Hs * Hs / (std::pow(Gs - 1, 3) * cot));
  result.d50 = stone_size(result.median_mass, SizeMeaning::sphere,
                          Density::pounds_mass_per_cubic_foot(Gs * 62.4));
  steps.given("Hs", "significant wave height", measure(inputs.wave_height));
  steps.given("Gs", "specific gravity of the rock", measure(inputs.specific_gravity));
  steps.given("cotα", "slope", measure(cot));
  steps.computed("W50", "required median mass", "19.5·Gs·Hs³/[(Gs−1)³·cotα] (lb, ft)",
                 measure(result.median_mass), tr69);
  steps.computed_rock("D50", "sphere of the median mass", "(6·W50/(π·γ))^⅓", result.d50);
  return result;
}

const SizingMethod& reservoir_wave_rock_method() {
  static const DescribedReservoirWaveRock method = build_reservoir_wave_rock();
  return method;
}

}  // namespace proofstone
