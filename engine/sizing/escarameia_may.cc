#include "engine/sizing/escarameia_may.h"

#include <cmath>

#include "engine/sizing/nominal_diameter.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedEscarameiaMay = TypedSizingMethod<EscarameiaMayInputs, EscarameiaMayResult>;

/// Above this turbulence the velocity near the bed must be given.
constexpr double highest_r_with_average = 0.30;

const char* const rock_manual_of_escarameia_may =
    "CIRIA C683 (2007) eq. 5.223 (from memory; confirm)";

std::variant<EscarameiaMayInputs, NotApplicable> escarameia_may_from_zone(const ZoneSetting& zone) {
  EscarameiaMayInputs in;
  in.specific_gravity = zone.rock.specific_gravity;
  in.average_velocity = zone.average_velocity;
  if (zone.place == ZonePlace::bank) in.bank_angle = zone.bank_angle;
  if (zone.turbulence == Turbulence::high) {
    in.turbulence_intensity = Dimensionless::number(0.60);
  } else if (zone.bend_side == BendSide::outside) {
    in.turbulence_intensity = Dimensionless::number(0.20);
  }
  return in;
}

MethodDescription describe_escarameia_may() {
  MethodDescription about;
  about.id = "escarameia-may";
  about.title = "Escarameia and May's formula";
  about.purpose =
      "Size of rock and gabion mattresses in turbulent water, from the velocity near the bed and "
      "the turbulence intensity there.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"CIRIA C683, The Rock Manual, 2nd ed. (2007)",
                    "eq. 5.223 (Escarameia and May 1992)", SourceStanding::memory}};
  about.cautions = {
      "Turbulence intensity r: 0.12 in a straight reach (0.20 on the high side), 0.20 at the edges "
      "of a revetment, 0.35 to 0.50 at piers, spurs and transitions, 0.60 below structures.",
      "The relation of the velocity near the bed to the average is only good for r from 0.12 to "
      "0.20; where it matters, give the velocity near the bed.",
      "It holds no safety factor: put it on the velocity or the turbulence.",
      "The size is a cube's; the median size by sieve is 1/0.84 times larger."};
  return about;
}

DescribedEscarameiaMay build_escarameia_may() {
  DescribedEscarameiaMay method(
      describe_escarameia_may(), &escarameia_may, &escarameia_may_from_zone,
      [](const EscarameiaMayResult& result) { return RequiredSize{50, result.d50}; });
  method.without_steps(&escarameia_may);
  method.defaulted({"turbulence_intensity", "r", "turbulence intensity at 10 % of the depth"},
                   &EscarameiaMayInputs::turbulence_intensity, unit::number,
                   AllowedRange::between(0, 1));
  method.optional({"bottom_velocity", "ub", "velocity at 10 % of the depth above the bed"},
                  &EscarameiaMayInputs::bottom_velocity, unit::meter_per_second,
                  AllowedRange::positive_to(20),
                  "from the average velocity, where r is at most 0.30");
  method.optional({"average_velocity", "U", "depth-averaged velocity"},
                  &EscarameiaMayInputs::average_velocity, unit::meter_per_second,
                  AllowedRange::positive_to(20), "only needed without bottom_velocity");
  method.defaulted({"specific_gravity", "Δ+1", "specific gravity of the rock"},
                   &EscarameiaMayInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.choice({"armour", "cT", "what resists"}, &EscarameiaMayInputs::armour,
                {{ArmourKind::rock, "rock", "loose rock: 12.3·r − 0.20"},
                 {ArmourKind::gabion, "gabion", "gabion mattress: 12.3·r − 1.65"}});
  method.defaulted({"bank_angle", "α", "bank angle from horizontal, for its limit"},
                   &EscarameiaMayInputs::bank_angle, unit::degree, AllowedRange::between(0, 90));
  method.output({"coefficient", "cT", "turbulence coefficient"}, &EscarameiaMayResult::coefficient,
                unit::number);
  method.output({"bottom_velocity", "ub", "velocity near the bed"},
                &EscarameiaMayResult::bottom_velocity, unit::meter_per_second);
  method.output({"dn50", "Dn50", "required size, side of a cube of the median mass"},
                &EscarameiaMayResult::dn50, unit::meter, LengthUse::rock);
  method.output({"d50", "D50", "required median size by sieve"}, &EscarameiaMayResult::d50,
                unit::meter, LengthUse::rock);
  method.limit(
      {"Slope of 1V:2H or flatter", rock_manual_of_escarameia_may},
      [](const EscarameiaMayInputs& in) { return std::tan(in.bank_angle.radians()) < 0.5 + 1e-9; });
  method.limit(
      {"Turbulence intensity at least 0.05, under gabions 0.15", rock_manual_of_escarameia_may},
      [](const EscarameiaMayInputs& in) {
        const double least = in.armour == ArmourKind::rock ? 0.05 : 0.15;
        return in.turbulence_intensity.number() > least - 1e-9;
      });
  method.limit({"Velocity near the bed given, or turbulence intensity from 0.12 to 0.20",
                rock_manual_of_escarameia_may},
               [](const EscarameiaMayInputs& in) {
                 const double r = in.turbulence_intensity.number();
                 return in.bottom_velocity.has_value() || (r > 0.12 - 1e-9 && r < 0.20 + 1e-9);
               });
  method.for_comparison_until_chosen(
      {"turbulence_intensity"},
      "the turbulence intensity is not known of the zone; the table's value for its place stands "
      "in for it. Choose turbulence_intensity, and bottom_velocity where it is known, for the zone "
      "to let it govern.");
  return method;
}

Expected<Velocity> velocity_near_bed(const EscarameiaMayInputs& in) {
  if (in.bottom_velocity) return *in.bottom_velocity;
  const double r = in.turbulence_intensity.number();
  if (!in.average_velocity || r > highest_r_with_average) {
    return Problem{"missing-input",
                   "The velocity near the bed is needed; from the average velocity it can be taken "
                   "only where the turbulence intensity is at most 0.30.",
                   "", "/bottom_velocity", "a velocity"};
  }
  return (1.04 - 1.48 * r) * *in.average_velocity;
}

void explain(const EscarameiaMayInputs& in, const EscarameiaMayResult& result, Steps& steps) {
  steps.given("r", "turbulence intensity", measure(in.turbulence_intensity));
  const char* const meaning = "velocity at 10 % of the depth above the bed";
  if (!in.bottom_velocity && in.average_velocity) {
    steps.given("U", "depth-averaged velocity", measure(*in.average_velocity));
    steps.computed("ub", meaning, "(1.04 − 1.48·r)·U", measure(result.bottom_velocity),
                   rock_manual_of_escarameia_may);
  } else {
    steps.given("ub", meaning, measure(result.bottom_velocity));
  }
  const bool rock = in.armour == ArmourKind::rock;
  steps.computed("cT", "turbulence coefficient", rock ? "12.3·r − 0.20" : "12.3·r − 1.65",
                 measure(result.coefficient), rock_manual_of_escarameia_may);
  steps.given("Δ", "specific gravity of the rock less 1",
              measure(in.specific_gravity.number() - 1));
  steps.computed_rock("Dn50", "required size, side of a cube of the median mass",
                      "cT·ub²/(2gΔ), g = 9.80665 m/s²", result.dn50, rock_manual_of_escarameia_may);
  steps.computed_rock("D50", "median size by sieve", "Dn50/0.84", result.d50,
                      nominal_over_sieve_source);
}

}  // namespace

Expected<EscarameiaMayResult> escarameia_may(const EscarameiaMayInputs& inputs) {
  const auto near_bed = velocity_near_bed(inputs);
  if (!near_bed) return near_bed.problems();
  const bool rock = inputs.armour == ArmourKind::rock;
  const double r = inputs.turbulence_intensity.number();
  const double cT = 12.3 * r - (rock ? 0.20 : 1.65);
  if (!(cT > 0)) {
    return Problem{"outside-allowed", "At so low a turbulence the formula has no meaning.", "",
                   "/turbulence_intensity", rock ? "at least 0.05" : "at least 0.15"};
  }
  const double ub = near_bed->meters_per_second();
  const double delta = inputs.specific_gravity.number() - 1;
  const double Dn50 = cT * ub * ub / (2 * g_si * delta);

  EscarameiaMayResult result;
  result.coefficient = Dimensionless::number(cT);
  result.bottom_velocity = *near_bed;
  result.dn50 = Length::meters(Dn50);
  result.d50 = sieve_size_of_nominal(result.dn50);
  return result;
}

Expected<EscarameiaMayResult> escarameia_may(const EscarameiaMayInputs& inputs, Steps& steps) {
  auto result = escarameia_may(inputs);
  if (result) explain(inputs, *result, steps);
  return result;
}

const SizingMethod& escarameia_may_method() {
  static const DescribedEscarameiaMay method = build_escarameia_may();
  return method;
}

}  // namespace proofstone
