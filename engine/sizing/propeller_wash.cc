#include "engine/sizing/propeller_wash.h"

#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

constexpr double water_kg_per_m3 = 1000;
constexpr double isbash_coefficient = 0.86;

const char* const page_of_propeller_wash = "Fuehrer, and PIANC (from memory, with doubt; confirm)";

TypedMethod<PropellerWashInputs, PropellerWashResult> build_propeller_wash() {
  MethodDescription about;
  about.id = "propeller-wash";
  about.title = "Propeller wash";
  about.purpose = "Size of rock that stays on the bed under the jet of a ship's propeller.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"Fuehrer; PIANC guidelines", "jet velocity and its share at the bed",
       SourceStanding::memory},
      {"USACE Hydraulic Design Criteria", "sheet 712-1, high turbulence", SourceStanding::memory}};
  about.cautions = {
      "Recalled with doubt: confirm it against the guideline before anything rests on it.",
      "A manoeuvring ship, a rudder that turns the jet and a quay wall raise the velocity."};
  TypedMethod<PropellerWashInputs, PropellerWashResult> method(about, &propeller_wash);
  method.required({"power_kilowatts", "P", "engine power used, in kW"},
                  &PropellerWashInputs::power_kilowatts, unit::number,
                  AllowedRange::positive_to(1e5));
  method.required({"propeller_diameter", "Dp", "diameter of the propeller"},
                  &PropellerWashInputs::propeller_diameter, unit::meter,
                  AllowedRange::positive_to(15));
  method.required({"height_above_bed", "hp", "height of the propeller's axis above the bed"},
                  &PropellerWashInputs::height_above_bed, unit::meter,
                  AllowedRange::positive_to(50));
  method.choice({"kind", "c", "free or ducted"}, &PropellerWashInputs::kind,
                {ChoiceOption<PropellerKind>{PropellerKind::free, "free", "free: 1.48"},
                 {PropellerKind::ducted, "ducted", "in a duct: 1.17"}});
  method.defaulted({"specific_gravity", "γs/γw", "specific gravity of the rock"},
                   &PropellerWashInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.output({"jet_velocity", "U0", "velocity of the jet at the propeller"},
                &PropellerWashResult::jet_velocity, unit::meter_per_second);
  method.output({"bed_velocity_low", "Vb", "velocity at the bed, from"},
                &PropellerWashResult::bed_velocity_low, unit::meter_per_second);
  method.output({"bed_velocity_high", "Vb", "velocity at the bed, to"},
                &PropellerWashResult::bed_velocity_high, unit::meter_per_second);
  method.output({"d50", "D50", "required median size, at the upper velocity"},
                &PropellerWashResult::d50, unit::meter, LengthUse::rock);
  return method;
}

}  // namespace

Expected<PropellerWashResult> propeller_wash(const PropellerWashInputs& inputs, Steps& steps) {
  const double P = 1000 * inputs.power_kilowatts.number();
  const double Dp = inputs.propeller_diameter.meters();
  const double hp = inputs.height_above_bed.meters();
  if (!(hp > Dp / 2)) {
    return Problem{"propeller-in-the-bed",
                   "The axis lies less than half a propeller diameter above the bed.", "",
                   "/height_above_bed", "more than half the diameter"};
  }
  const double c = inputs.kind == PropellerKind::free ? 1.48 : 1.17;
  const double U0 = c * std::pow(P / (water_kg_per_m3 * Dp * Dp), 1.0 / 3);
  const double V_low = 0.22 * U0 * Dp / hp;
  const double V_high = 0.30 * U0 * Dp / hp;
  const double delta = inputs.specific_gravity.number() - 1;

  PropellerWashResult result;
  result.jet_velocity = Velocity::meters_per_second(U0);
  result.bed_velocity_low = Velocity::meters_per_second(V_low);
  result.bed_velocity_high = Velocity::meters_per_second(V_high);
  result.d50 = Length::meters(V_high * V_high /
                              (2 * g_si * delta * isbash_coefficient * isbash_coefficient));
  steps.given("P", "engine power used, kW", measure(inputs.power_kilowatts));
  steps.given("Dp", "diameter of the propeller", measure(inputs.propeller_diameter));
  steps.given("hp", "height of its axis above the bed", measure(inputs.height_above_bed));
  steps.computed("U0", "velocity of the jet",
                 "c·(P/(ρ·Dp²))^⅓ (W, kg/m³, m), c 1.48 free, 1.17 ducted",
                 measure(result.jet_velocity), page_of_propeller_wash);
  steps.computed("Vb", "velocity at the bed, from", "0.22·U0·Dp/hp",
                 measure(result.bed_velocity_low), page_of_propeller_wash);
  steps.computed("Vb", "velocity at the bed, to", "0.30·U0·Dp/hp",
                 measure(result.bed_velocity_high), page_of_propeller_wash);
  steps.computed_rock("D50", "required median size", "Vb²/(2g·Δ·0.86²)", result.d50,
                      "USACE HDC sheet 712-1, high turbulence (from memory; confirm)");
  return result;
}

const Method& propeller_wash_method() {
  static const TypedMethod<PropellerWashInputs, PropellerWashResult> method =
      build_propeller_wash();
  return method;
}

}  // namespace proofstone
