#include "engine/chute/overtopping_mishra.h"

#include <algorithm>
#include <cmath>

#include "engine/method/published_range.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedOvertoppingMishra =
    TypedSizingMethod<OvertoppingMishraInputs, OvertoppingMishraResult>;

const char* const guideline =
    "FHWA HEC-23 3rd ed. (2009), Design Guideline 5 (from memory; confirm)";

Problems impossible_faces(const OvertoppingMishraInputs& in) {
  const double alpha = angle_of(in.slope).radians();
  if (!(in.slope.ratio() < std::tan(in.angle_of_repose.radians()))) {
    return {face_too_steep()};
  }
  if (!(in.specific_gravity.number() * std::cos(alpha) > 1)) {
    return {{"rock-too-light", "On so steep a face rock this light has no weight left to hold it.",
             "", "/specific_gravity", "γs/γw·cos α above 1"}};
  }
  return {};
}

double median_size(double q, const OvertoppingMishraInputs& in) {
  const double S = in.slope.ratio();
  const double alpha = angle_of(in.slope).radians();
  const double tan_phi = std::tan(in.angle_of_repose.radians());
  const double SG = in.specific_gravity.number();
  const double Cu = in.uniformity.number();
  const double face = std::sin(alpha) /
                      ((SG * std::cos(alpha) - 1) * (std::cos(alpha) * tan_phi - std::sin(alpha)));
  return 0.525 * std::pow(q, 0.52) / (std::pow(Cu, 0.25) * std::pow(S, 0.75)) *
         std::pow(face, 1.11);
}

void flow_over_and_within(double q, const OvertoppingMishraInputs& in,
                          OvertoppingMishraResult& result) {
  const double S = in.slope.ratio();
  const double SG = in.specific_gravity.number();
  const double D50 = result.d50.feet();
  const double porosity = in.porosity.number();

  const double Vi =
      2.48 * std::sqrt(g_us * D50) * std::pow(S, 0.58) / std::pow(in.uniformity.number(), 2.22);
  const double h = 0.06 * (SG - 1) * D50 * std::tan(in.angle_of_repose.radians()) / (0.97 * S);
  const double n = 0.0414 * std::pow(D50, 1.0 / 6.0);
  const double q1 = std::min(q, 1.486 / n * std::pow(h, 5.0 / 3.0) * std::sqrt(S));
  const double q2 = q - q1;

  result.interstitial_velocity = Velocity::feet_per_second(Vi);
  result.surface_depth = Length::feet(h);
  result.roughness = Dimensionless::number(n);
  result.surface_discharge = UnitDischarge::square_feet_per_second(q1);
  result.interstitial_discharge = UnitDischarge::square_feet_per_second(q2);
  result.depth_in_rock = Length::feet(q2 / (Vi * porosity));
  result.depth_over_size = Dimensionless::number(result.depth_in_rock / result.d50);
  result.depth_all_in_rock = Length::feet(q / (Vi * porosity));
  result.layer_thickness = std::max(2 * result.d50, result.depth_in_rock);
}

void explain(const OvertoppingMishraInputs& in, const OvertoppingMishraResult& result,
             Steps& steps) {
  steps.given("S", "slope of the face, tan α", measure(in.slope));
  steps.given("Cu", "D60/D10", measure(in.uniformity));
  steps.given("γs/γw", "specific gravity of the rock", measure(in.specific_gravity));
  steps.given("φ", "angle of repose of the rock", measure(in.angle_of_repose));
  steps.computed_rock("D50", "required median size",
                      "0.525·q^0.52/(Cu^0.25·S^0.75)·{sin α/[(γs/γw·cos α − 1)(cos α·tan φ − sin "
                      "α)]}^1.11 (ft, ft²/s)",
                      result.d50, guideline);
  steps.computed("Vi", "velocity in the pores", "2.48·√(g·D50)·S^0.58/Cu^2.22",
                 measure(result.interstitial_velocity), guideline);
  steps.computed("h", "depth over the rock that it can carry",
                 "0.06·(γs/γw − 1)·D50·tan φ/(0.97·S)", measure(result.surface_depth), guideline);
  steps.computed("n", "roughness of the surface", "0.0414·D50^(1/6) (ft)",
                 measure(result.roughness), guideline);
  steps.computed("q1", "discharge over the rock", "1.486/n·h^(5/3)·S^½, at most q (ft, ft²/s)",
                 measure(result.surface_discharge), guideline);
  steps.computed("q2", "discharge within the rock", "q − q1",
                 measure(result.interstitial_discharge), guideline);
  steps.given("n_p", "porosity of the layer", measure(in.porosity));
  steps.computed("y", "depth within the rock", "q2/(Vi·n_p)", measure(result.depth_in_rock),
                 guideline);
  steps.computed("y/D50", "the same in median sizes", "", measure(result.depth_over_size));
  steps.computed("y", "note: depth within the rock if all of q ran there", "q/(Vi·n_p)",
                 measure(result.depth_all_in_rock), guideline);
  steps.computed("t", "layer thickness", "the larger of 2·D50 and y",
                 measure(result.layer_thickness), guideline);
}

std::variant<OvertoppingMishraInputs, NotApplicable> overtopping_mishra_from_zone(
    const ZoneSetting& zone) {
  if (zone.rock.angularity == Angularity::rounded) {
    return NotApplicable{"The tests were on angular rock, and this rock is rounded."};
  }
  OvertoppingMishraInputs in;
  take_chute_flow(zone, in);
  in.specific_gravity = zone.rock.specific_gravity;
  if (zone.rock.angle_of_repose) in.angle_of_repose = *zone.rock.angle_of_repose;
  return in;
}

MethodDescription describe_overtopping_mishra() {
  MethodDescription about;
  about.id = "overtopping-mishra";
  about.title = "Overtopping with flow within the rock";
  about.purpose =
      "Median size of large angular rock on a steep overtopped embankment, how much water runs "
      "over and within the layer, and how thick the layer must be.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"FHWA HEC-23 3rd ed. (2009), FHWA-NHI-09-112", "Design Guideline 5", SourceStanding::memory},
      {"Frizell, Ruff and Mishra (1998)", "near full-scale tests on a 2H:1V face",
       SourceStanding::memory}};
  about.cautions = {
      "From 25 % slope on the guideline wants all the flow within the rock: compare the layer with "
      "the depth for that.",
      "A flat face gives rock and layer that do not go together; the depth over D50 shows it.",
      "Overtopping of a dam is a matter for the licensed engineer and the dam-safety authority."};
  return about;
}

void describe_overtopping_mishra_inputs(DescribedOvertoppingMishra& method) {
  describe_chute_flow(method);
  method.required({"slope", "S", "slope of the face, tan α"}, &OvertoppingMishraInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(2));
  method.defaulted({"uniformity", "Cu", "D60/D10"}, &OvertoppingMishraInputs::uniformity,
                   unit::number, AllowedRange::between(1, 20));
  method.defaulted({"specific_gravity", "γs/γw", "specific gravity of the rock"},
                   &OvertoppingMishraInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.defaulted({"angle_of_repose", "φ", "angle of repose of the rock"},
                   &OvertoppingMishraInputs::angle_of_repose, unit::degree,
                   AllowedRange::between(20, 60));
  method.defaulted({"porosity", "n_p", "porosity of the layer"}, &OvertoppingMishraInputs::porosity,
                   unit::number, AllowedRange::between(0.1, 0.7));
}

void describe_overtopping_mishra_outputs(DescribedOvertoppingMishra& method) {
  method.output({"d50", "D50", "required median size"}, &OvertoppingMishraResult::d50, unit::foot,
                LengthUse::rock);
  method.output({"interstitial_velocity", "Vi", "velocity in the pores"},
                &OvertoppingMishraResult::interstitial_velocity, unit::foot_per_second);
  method.output({"surface_depth", "h", "depth over the rock that it can carry"},
                &OvertoppingMishraResult::surface_depth, unit::foot);
  method.output({"roughness", "n", "roughness of the surface"}, &OvertoppingMishraResult::roughness,
                unit::number);
  method.output({"surface_discharge", "q1", "discharge over the rock"},
                &OvertoppingMishraResult::surface_discharge, unit::square_foot_per_second);
  method.output({"interstitial_discharge", "q2", "discharge within the rock"},
                &OvertoppingMishraResult::interstitial_discharge, unit::square_foot_per_second);
  method.output({"depth_in_rock", "y", "depth within the rock"},
                &OvertoppingMishraResult::depth_in_rock, unit::foot);
  method.output({"depth_over_size", "y/D50", "the same in median sizes"},
                &OvertoppingMishraResult::depth_over_size, unit::number);
  method.output({"depth_all_in_rock", "y", "depth within the rock if all of q ran there"},
                &OvertoppingMishraResult::depth_all_in_rock, unit::foot);
  method.output({"layer_thickness", "t", "layer thickness"},
                &OvertoppingMishraResult::layer_thickness, unit::foot);
}

bool layer_can_hold_the_flow(const OvertoppingMishraInputs& in) {
  Steps unread;
  const auto result = overtopping_mishra(in, unread);
  return result && result->depth_over_size.number() < 4 + 1e-9;
}

DescribedOvertoppingMishra build_overtopping_mishra() {
  DescribedOvertoppingMishra method(
      describe_overtopping_mishra(), &overtopping_mishra, &overtopping_mishra_from_zone,
      [](const OvertoppingMishraResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::chute});
  method.for_comparison_until_chosen(
      {"uniformity", "porosity"},
      "the zone does not tell how uniform the rock is or its porosity.");
  describe_overtopping_mishra_inputs(method);
  describe_overtopping_mishra_outputs(method);
  method.limit({"Slope from 25 to 50 %; the tests were on 2H:1V", guideline},
               [](const OvertoppingMishraInputs& in) {
                 return PublishedRange{0.25, 0.50}.holds(in.slope.ratio());
               });
  method.limit({"Depth within the rock at most 4·D50; else larger rock", guideline},
               layer_can_hold_the_flow);
  return method;
}

}  // namespace

Expected<OvertoppingMishraResult> overtopping_mishra(const OvertoppingMishraInputs& inputs,
                                                     Steps& steps) {
  const auto unit_discharge = unit_discharge_of(inputs, steps);
  if (!unit_discharge) return unit_discharge.problems();
  const Problems impossible = impossible_faces(inputs);
  if (!impossible.empty()) return impossible;
  const double q = unit_discharge->square_feet_per_second();

  OvertoppingMishraResult result;
  result.d50 = Length::feet(median_size(q, inputs));
  flow_over_and_within(q, inputs, result);
  explain(inputs, result, steps);
  return result;
}

const SizingMethod& overtopping_mishra_method() {
  static const DescribedOvertoppingMishra method = build_overtopping_mishra();
  return method;
}

}  // namespace proofstone
