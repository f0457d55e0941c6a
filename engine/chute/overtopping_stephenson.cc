#include "engine/chute/overtopping_stephenson.h"
#include "engine/sizing/typed_sizing_method.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedOvertoppingStephenson =
    TypedSizingMethod<OvertoppingStephensonInputs, OvertoppingStephensonResult>;

const char* const book =
    "Stephenson (1979), Rockfill in Hydraulic Engineering (from memory; confirm)";

std::variant<OvertoppingStephensonInputs, NotApplicable> overtopping_stephenson_from_zone(
    const ZoneSetting& zone) {
  OvertoppingStephensonInputs in;
  take_chute_flow(zone, in);
  in.rock = zone.rock.angularity == Angularity::rounded ? StephensonRock::rounded
                                                        : StephensonRock::crushed;
  in.specific_gravity = zone.rock.specific_gravity;
  if (zone.rock.angle_of_repose) in.angle_of_repose = *zone.rock.angle_of_repose;
  return in;
}

MethodDescription describe_overtopping_stephenson() {
  MethodDescription about;
  about.id = "overtopping-stephenson";
  about.title = "Stephenson equation for steep rock faces";
  about.purpose =
      "Median size of rock on a steep face or toe that water runs through and over, with porosity, "
      "rock density and angle of repose.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"Stephenson (1979), Rockfill in Hydraulic Engineering",
                    "threshold flow on a rock face", SourceStanding::memory}};
  about.cautions = {
      "The coefficient is for the threshold of movement: an allowance of 1.2 to 1.8 on the "
      "discharge "
      "is customary.",
      "Overtopping of a dam is a matter for the licensed engineer and the dam-safety authority."};
  return about;
}

void describe_overtopping_stephenson_inputs(DescribedOvertoppingStephenson& method) {
  describe_chute_flow(method);
  method.required({"slope", "tan θ", "slope of the face"}, &OvertoppingStephensonInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(2));
  method.choice({"rock", "C", "shape of the stones"}, &OvertoppingStephensonInputs::rock,
                {{StephensonRock::crushed, "crushed", "crushed rock: C 0.27"},
                 {StephensonRock::rounded, "rounded", "rounded gravel and cobbles: C 0.22"}});
  method.defaulted({"porosity", "n", "porosity of the layer"},
                   &OvertoppingStephensonInputs::porosity, unit::number,
                   AllowedRange::between(0.1, 0.7));
  method.defaulted({"specific_gravity", "γs/γw", "specific gravity of the rock"},
                   &OvertoppingStephensonInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.defaulted({"angle_of_repose", "φ", "angle of repose of the rock"},
                   &OvertoppingStephensonInputs::angle_of_repose, unit::degree,
                   AllowedRange::between(20, 60));
  method.defaulted({"discharge_allowance", "", "allowance on the discharge, 1.2 to 1.8"},
                   &OvertoppingStephensonInputs::discharge_allowance, unit::number,
                   AllowedRange::between(1, 3));
}

DescribedOvertoppingStephenson build_overtopping_stephenson() {
  DescribedOvertoppingStephenson method(
      describe_overtopping_stephenson(), &overtopping_stephenson, &overtopping_stephenson_from_zone,
      [](const OvertoppingStephensonResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::chute});
  method.for_comparison_until_chosen({"porosity"}, "the zone does not tell the rock's porosity.");
  describe_overtopping_stephenson_inputs(method);
  method.output({"coefficient", "C", "coefficient of the rock"},
                &OvertoppingStephensonResult::coefficient, unit::number);
  method.output({"sizing_discharge", "q", "unit discharge with the allowance"},
                &OvertoppingStephensonResult::sizing_discharge, unit::square_foot_per_second);
  method.output({"d50", "D50", "required median size"}, &OvertoppingStephensonResult::d50,
                unit::foot, LengthUse::rock);
  method.limit({"Slope of 10 % or more", book}, [](const OvertoppingStephensonInputs& in) {
    return in.slope.ratio() > 0.10 - 1e-9;
  });
  return method;
}

}  // namespace

Expected<OvertoppingStephensonResult> overtopping_stephenson(
    const OvertoppingStephensonInputs& inputs, Steps& steps) {
  const auto unit_discharge = unit_discharge_of(inputs, steps);
  if (!unit_discharge) return unit_discharge.problems();
  const double tan_theta = inputs.slope.ratio();
  const double tan_phi = std::tan(inputs.angle_of_repose.radians());
  if (!(tan_theta < tan_phi)) return face_too_steep();

  OvertoppingStephensonResult result;
  result.coefficient = Dimensionless::number(inputs.rock == StephensonRock::crushed ? 0.27 : 0.22);
  result.sizing_discharge = inputs.discharge_allowance.number() * *unit_discharge;
  const double C = result.coefficient.number();
  const double q = result.sizing_discharge.square_meters_per_second();
  const double n = inputs.porosity.number();
  const double SG = inputs.specific_gravity.number();
  const double cos_theta = std::cos(angle_of(inputs.slope).radians());

  const double held = (1 - n) * (SG - 1) * cos_theta * (tan_phi - tan_theta);
  const double D50 = std::pow(q * std::pow(tan_theta, 7.0 / 6.0) * std::pow(n, 1.0 / 6.0) /
                                  (C * std::sqrt(g_si) * std::pow(held, 5.0 / 3.0)),
                              2.0 / 3.0);

  result.d50 = Length::meters(D50);
  steps.given("", "allowance on the discharge", measure(inputs.discharge_allowance), book);
  steps.computed("q", "unit discharge with the allowance", "", measure(result.sizing_discharge));
  steps.given("tan θ", "slope of the face", measure(inputs.slope));
  steps.given("C", "coefficient of the rock", measure(result.coefficient), book);
  steps.given("n", "porosity of the layer", measure(inputs.porosity));
  steps.given("γs/γw", "specific gravity of the rock", measure(inputs.specific_gravity));
  steps.given("φ", "angle of repose of the rock", measure(inputs.angle_of_repose));
  steps.computed_rock("D50", "required median size",
                      "{q·(tan θ)^(7/6)·n^(1/6)/[C·√g·[(1 − n)(γs/γw − 1)·cos θ·(tan φ − tan "
                      "θ)]^(5/3)]}^(2/3)",
                      result.d50, book);
  return result;
}

const SizingMethod& overtopping_stephenson_method() {
  static const DescribedOvertoppingStephenson method = build_overtopping_stephenson();
  return method;
}

}  // namespace proofstone
