#include "engine/grade_control/sloping_rock_drop.h"

#include <cmath>

#include "engine/grade_control/critical_velocity.h"
#include "engine/sizing/front_range_channel.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedSlopingRockDrop = TypedSizingMethod<SlopingRockDropInputs, SlopingRockDropResult>;

const char* const usdcm_of_sloping_rock_drop =
    "Smith and Murray; USDCM, Major Drainage, eq. 5-4 (1984)";

constexpr double published_constant = 4.5;

Expected<Velocity> face_velocity(const SlopingRockDropInputs& in, Steps& steps) {
  if (in.velocity) {
    steps.given("V", "velocity on the face", measure(*in.velocity));
    return *in.velocity;
  }
  const auto q = unit_discharge_of(in, steps);
  if (!q) return q.problems();
  return critical_velocity(*q, steps);
}

std::variant<SlopingRockDropInputs, NotApplicable> sloping_rock_drop_from_zone(
    const ZoneSetting& zone) {
  SlopingRockDropInputs in;
  take_chute_flow(zone, in);
  in.velocity = zone.stated.velocity;
  in.specific_gravity = zone.rock.specific_gravity;
  return in;
}

MethodDescription describe_sloping_rock_drop() {
  MethodDescription about;
  about.id = "sloping-rock-drop";
  about.title = "Loose rock on a sloping drop";
  about.purpose =
      "Median size of loose rock on the face of a low sloping drop, from velocity and slope, with "
      "critical velocity where none is given.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"Urban Storm Drainage Criteria Manual (USDCM), Major Drainage (1984)",
                    "eq. 5-4, after Smith and Murray; roughness; transitions",
                    SourceStanding::published}};
  about.cautions = {
      "Take the unit discharge of the main channel or the notch in the crest, not the total over "
      "the full width.",
      "A spillway sheet of a 1992 permit works with 5.8 in place of 4.5, which gives rock 40 % "
      "smaller: say which constant a design stands on.",
      "At transitions: the greatest velocity raised by 20 %, rock 5 ft upstream and 10 ft "
      "downstream.",
      "Seepage under the drop can undo it whatever its rock: check the weighted creep."};
  return about;
}

void describe_sloping_rock_drop_inputs(DescribedSlopingRockDrop& method) {
  method.optional({"velocity", "V", "velocity on the face"}, &SlopingRockDropInputs::velocity,
                  unit::foot_per_second, AllowedRange::positive_to(60), "critical velocity of q");
  describe_chute_flow(method);
  method.required({"slope", "S", "slope of the face"}, &SlopingRockDropInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(1));
  method.defaulted({"specific_gravity", "Ss", "specific gravity of the rock"},
                   &SlopingRockDropInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.defaulted({"constant", "", "constant of the equation"}, &SlopingRockDropInputs::constant,
                   unit::number, AllowedRange::between(2, 8));
}

DescribedSlopingRockDrop build_sloping_rock_drop() {
  DescribedSlopingRockDrop method(
      describe_sloping_rock_drop(), &sloping_rock_drop, &sloping_rock_drop_from_zone,
      [](const SlopingRockDropResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::drop});
  describe_sloping_rock_drop_inputs(method);
  method.output({"velocity", "V", "velocity used"}, &SlopingRockDropResult::velocity,
                unit::foot_per_second);
  method.output({"type_parameter", "X", "V·S^0.17/(Ss−1)^0.66"},
                &SlopingRockDropResult::type_parameter, unit::number);
  method.output({"d50", "d50", "required median size"}, &SlopingRockDropResult::d50, unit::foot,
                LengthUse::rock);
  method.output({"roughness", "n", "Manning's n of that rock, not grouted"},
                &SlopingRockDropResult::roughness, unit::number);
  method.limit(
      {"Specific gravity at least 2.50", usdcm_of_sloping_rock_drop},
      [](const SlopingRockDropInputs& in) { return in.specific_gravity.number() > 2.5 - 1e-9; });
  method.limit({"The published constant 4.5 or less; a larger one gives smaller rock",
                usdcm_of_sloping_rock_drop},
               [](const SlopingRockDropInputs& in) {
                 return in.constant.number() < published_constant + 1e-9;
               });
  return method;
}

}  // namespace

Expected<SlopingRockDropResult> sloping_rock_drop(const SlopingRockDropInputs& inputs,
                                                  Steps& steps) {
  const auto velocity = face_velocity(inputs, steps);
  if (!velocity) return velocity.problems();

  SlopingRockDropResult result;
  result.velocity = *velocity;
  result.type_parameter =
      front_range_type_parameter(*velocity, inputs.slope, inputs.specific_gravity);
  const double d50 = std::pow(result.type_parameter.number() / inputs.constant.number(), 2);
  result.d50 = Length::feet(d50);
  result.roughness = Dimensionless::number(0.0395 * std::pow(d50, 1.0 / 6.0));
  steps.given("S", "slope of the face", measure(inputs.slope));
  steps.given("Ss", "specific gravity of the rock", measure(inputs.specific_gravity));
  steps.computed("X", "velocity and slope together", "V·S^0.17/(Ss−1)^0.66 (ft/s)",
                 measure(result.type_parameter), usdcm_of_sloping_rock_drop);
  steps.given("K", "constant of the equation", measure(inputs.constant),
              usdcm_of_sloping_rock_drop);
  steps.computed_rock("d50", "required median size", "(X/K)² (ft)", result.d50,
                      usdcm_of_sloping_rock_drop);
  steps.computed("n", "roughness of that rock, not grouted", "0.0395·d50^(1/6) (ft)",
                 measure(result.roughness), usdcm_of_sloping_rock_drop);
  return result;
}

const SizingMethod& sloping_rock_drop_method() {
  static const DescribedSlopingRockDrop method = build_sloping_rock_drop();
  return method;
}

}  // namespace proofstone
