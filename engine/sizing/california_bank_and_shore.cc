#include "engine/sizing/california_bank_and_shore.h"

#include <cmath>

#include "engine/hydraulics/water_weight.h"
#include "engine/rock/size_and_mass.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedCaliforniaBankAndShore =
    TypedSizingMethod<CaliforniaBankAndShoreInputs, CaliforniaBankAndShoreResult>;

constexpr double random_placing_degrees = 70;

const char* const cabs = "FHWA-CA-TL-95-10 (2000) (from memory; confirm)";

double velocity_ratio(FaceAttack attack) {
  switch (attack) {
    case FaceAttack::parallel:
      return 0.67;
    case FaceAttack::impinging:
      return 1.33;
    case FaceAttack::as_given:
      return 1;
  }
  return 1.33;
}

std::variant<CaliforniaBankAndShoreInputs, NotApplicable> california_bank_and_shore_from_zone(
    const ZoneSetting& zone) {
  if (zone.turbulence == Turbulence::high) {
    return NotApplicable{"The method is for banks along a channel, not just below structures."};
  }
  CaliforniaBankAndShoreInputs in;
  in.velocity = zone.average_velocity;
  in.attack = zone.bend_side == BendSide::outside ? FaceAttack::impinging : FaceAttack::parallel;
  in.face_angle = zone.bank_angle;
  in.specific_gravity = zone.rock.specific_gravity;
  return in;
}

MethodDescription describe_california_bank_and_shore() {
  MethodDescription about;
  about.id = "california-bank-and-shore";
  about.title = "California bank and shore method";
  about.purpose =
      "Least mass of the stones of the outer layer on a bank, from the velocity at the face and "
      "the slope of the face.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"FHWA-CA-TL-95-10, California Bank and Shore Rock Slope Protection Design, 3rd "
       "internet ed. (2000)",
       "equation for the mass of stone under current", SourceStanding::memory}};
  about.cautions = {
      "Choose the class of which at least half, by mass, is heavier than W; lay it with inner "
      "layer, backing and fabric below.",
      "W goes with the sixth power of the velocity: be sure of it.", "The usual face is 1V:1.5H."};
  return about;
}

DescribedCaliforniaBankAndShore build_california_bank_and_shore() {
  DescribedCaliforniaBankAndShore method(
      describe_california_bank_and_shore(), &california_bank_and_shore,
      &california_bank_and_shore_from_zone,
      [](const CaliforniaBankAndShoreResult& result) { return RequiredSize{50, result.diameter}; },
      {ZonePlace::bank});
  method.required({"velocity", "V_avg", "average velocity of the channel, or that at the face"},
                  &CaliforniaBankAndShoreInputs::velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60));
  method.choice(
      {"attack", "", "how the water runs at the face"}, &CaliforniaBankAndShoreInputs::attack,
      {{FaceAttack::parallel, "parallel", "along the face: 0.67 × average"},
       {FaceAttack::impinging, "impinging", "at the face, as outside of a bend: 1.33 × average"},
       {FaceAttack::as_given, "as-given", "the velocity given is that at the face"}});
  method.required({"face_angle", "a", "face angle from horizontal"},
                  &CaliforniaBankAndShoreInputs::face_angle, unit::degree,
                  AllowedRange::between(0, 90));
  method.defaulted({"specific_gravity", "Sg", "specific gravity of the rock"},
                   &CaliforniaBankAndShoreInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.output({"face_velocity", "V", "velocity at the face"},
                &CaliforniaBankAndShoreResult::face_velocity, unit::foot_per_second);
  method.output({"mass", "W", "least mass of the stones of the outer layer"},
                &CaliforniaBankAndShoreResult::mass, unit::pound);
  method.output({"diameter", "D", "sphere of that mass"}, &CaliforniaBankAndShoreResult::diameter,
                unit::foot, LengthUse::rock);
  method.limit({"Face not steeper than 1V:1.5H", cabs}, [](const CaliforniaBankAndShoreInputs& in) {
    return std::tan(in.face_angle.radians()) < 1 / 1.5 + 1e-9;
  });
  method.for_comparison_until_chosen(
      {"attack"},
      "whether the water runs at the face or along it, which decides by the sixth power of twice "
      "the velocity, is only guessed from the side of the bend. Choose attack for the zone to let "
      "it govern.");
  return method;
}

}  // namespace

Expected<CaliforniaBankAndShoreResult> california_bank_and_shore(
    const CaliforniaBankAndShoreInputs& inputs, Steps& steps) {
  const double slack =
      Angle::degrees(random_placing_degrees).radians() - inputs.face_angle.radians();
  if (!(slack > 0)) {
    return Problem{"bank-too-steep", "No stone placed at random stays on a face this steep.", "",
                   "/face_angle", "a face flatter than 70°"};
  }
  const double ratio = velocity_ratio(inputs.attack);
  const double V = ratio * inputs.velocity.feet_per_second();
  const double Sg = inputs.specific_gravity.number();
  const double W =
      0.00002 * std::pow(V, 6) * Sg / (std::pow(Sg - 1, 3) * std::pow(std::sin(slack), 3));
  const Density rock = Density::pounds_mass_per_cubic_foot(Sg * gamma_w);

  CaliforniaBankAndShoreResult result;
  result.face_velocity = Velocity::feet_per_second(V);
  result.mass = Mass::pounds(W);
  result.diameter = stone_size(result.mass, SizeMeaning::sphere, rock);
  steps.given("V_avg", "velocity given", measure(inputs.velocity));
  steps.given("V/V_avg", "velocity at the face over it", measure(ratio), cabs);
  steps.computed("V", "velocity at the face", "(V/V_avg)·V_avg", measure(result.face_velocity));
  steps.given("Sg", "specific gravity of the rock", measure(inputs.specific_gravity));
  steps.given("a", "face angle from horizontal", measure(inputs.face_angle));
  steps.computed("W", "least mass of the stones of the outer layer",
                 "0.00002·V⁶·Sg/[(Sg−1)³·sin³(70° − a)] (lb, ft/s)", measure(result.mass), cabs);
  steps.computed_rock("D", "sphere of that mass", "(6W/(π·Sg·62.4 lb/ft³))^⅓", result.diameter);
  return result;
}

const SizingMethod& california_bank_and_shore_method() {
  static const DescribedCaliforniaBankAndShore method = build_california_bank_and_shore();
  return method;
}

}  // namespace proofstone
