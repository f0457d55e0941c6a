#include "engine/chute/spillway_face_rock.h"

#include "engine/chute/overtopping_abt_johnson.h"
#include "engine/chute/trapezoid_weir.h"
#include "engine/method/published_range.h"
#include "engine/sizing/typed_sizing_method.h"

namespace proofstone {

namespace {

using DescribedSpillwayFaceRock = TypedSizingMethod<SpillwayFaceRockInputs, SpillwayFaceRockResult>;

const char* const usdcm_of_spillway_face_rock = "USDCM Vol. 2, Storage (from memory; confirm)";

constexpr double no_movement = 1.35;

Expected<UnitDischarge> face_discharge(const SpillwayFaceRockInputs& in, Steps& steps) {
  if (!in.crest_head) return unit_discharge_of(in, steps);
  const UnitDischarge q = crest_unit_discharge(in.crest_coefficient, *in.crest_head);
  steps.given("H", "head over the crest", measure(*in.crest_head));
  steps.given("C", "weir coefficient, ft units", measure(in.crest_coefficient),
              usdcm_of_spillway_face_rock);
  steps.computed("q", "discharge for each unit of width", "C·H^1.5 (ft, ft²/s)", measure(q),
                 usdcm_of_spillway_face_rock);
  return q;
}

std::variant<SpillwayFaceRockInputs, NotApplicable> spillway_face_rock_from_zone(
    const ZoneSetting& zone) {
  SpillwayFaceRockInputs in;
  take_chute_flow(zone, in);
  return in;
}

MethodDescription describe_spillway_face_rock() {
  MethodDescription about;
  about.id = "spillway-face-rock";
  about.title = "Emergency spillway face rock";
  about.purpose =
      "Median size of rock on the face of an emergency spillway, exposed or under a cover of soil, "
      "from the unit discharge over its crest.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"Urban Storm Drainage Criteria Manual (USDCM) Vol. 2",
                    "storage: rock of emergency spillways", SourceStanding::memory},
                   {"NUREG/CR-4651 vol. 2 (1988)", "abstract: tests up to 20 % slope",
                    SourceStanding::published}};
  about.cautions = {
      "A cover of soil adds no strength: it is taken to be gone when the rock is needed.",
      "Faces are often steeper than the 20 % of the tests: read the rock-chute equation beside it.",
      "Spillways of dams are a matter for the licensed engineer and the dam-safety authority."};
  return about;
}

DescribedSpillwayFaceRock build_spillway_face_rock() {
  DescribedSpillwayFaceRock method(
      describe_spillway_face_rock(), &spillway_face_rock, &spillway_face_rock_from_zone,
      [](const SpillwayFaceRockResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::chute});
  method.for_comparison_until_chosen(
      {"concentration"}, "whether the chute is an emergency spillway is for the designer to say.");
  method.optional({"crest_head", "H", "head over the crest"}, &SpillwayFaceRockInputs::crest_head,
                  unit::foot, AllowedRange::positive_to(50), "unit discharge as given");
  method.defaulted({"crest_coefficient", "C", "weir coefficient, ft units"},
                   &SpillwayFaceRockInputs::crest_coefficient, unit::number,
                   AllowedRange::between(1.5, 4.5));
  describe_chute_flow(method);
  method.required({"slope", "S", "slope of the face"}, &SpillwayFaceRockInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(2));
  method.defaulted({"concentration", "Cf", "how far the flow gathers"},
                   &SpillwayFaceRockInputs::concentration, unit::number,
                   AllowedRange::between(1, 5));
  method.output({"unit_discharge", "q", "discharge for each unit of width"},
                &SpillwayFaceRockResult::unit_discharge, unit::square_foot_per_second);
  method.output({"sizing_discharge", "1.35·Cf·q", "unit discharge to size for"},
                &SpillwayFaceRockResult::sizing_discharge, unit::square_foot_per_second);
  method.output({"d50", "D50", "required median size"}, &SpillwayFaceRockResult::d50, unit::inch,
                LengthUse::rock);
  method.limit({"Slope tested: 1 to 20 %", "NUREG/CR-4651 vol. 2 (1988), abstract"},
               [](const SpillwayFaceRockInputs& in) {
                 return PublishedRange{0.01, 0.20}.holds(in.slope.ratio());
               });
  method.limit(
      {"Concentration factor at least 2", usdcm_of_spillway_face_rock},
      [](const SpillwayFaceRockInputs& in) { return in.concentration.number() > 2 - 1e-9; });
  return method;
}

}  // namespace

Expected<SpillwayFaceRockResult> spillway_face_rock(const SpillwayFaceRockInputs& inputs,
                                                    Steps& steps) {
  const auto q = face_discharge(inputs, steps);
  if (!q) return q.problems();

  SpillwayFaceRockResult result;
  result.unit_discharge = *q;
  result.sizing_discharge = no_movement * inputs.concentration.number() * *q;
  result.d50 = abt_johnson_size(result.sizing_discharge, inputs.slope);
  steps.given("S", "slope of the face", measure(inputs.slope));
  steps.given("Cf", "how far the flow gathers", measure(inputs.concentration),
              usdcm_of_spillway_face_rock);
  steps.computed("q", "unit discharge to size for", "1.35·Cf·q", measure(result.sizing_discharge),
                 usdcm_of_spillway_face_rock);
  steps.computed_rock("D50", "required median size", "5.23·S^0.43·(1.35·Cf·q)^0.56 (in, ft²/s)",
                      result.d50, usdcm_of_spillway_face_rock);
  return result;
}

const SizingMethod& spillway_face_rock_method() {
  static const DescribedSpillwayFaceRock method = build_spillway_face_rock();
  return method;
}

}  // namespace proofstone
