#include "engine/grade_control/grouted_boulder_drop.h"

#include <fmt/format.h>

#include "engine/grade_control/critical_velocity.h"
#include "engine/sizing/front_range_channel.h"

namespace proofstone {

namespace {

using DescribedGroutedBoulderDrop = TypedMethod<GroutedBoulderDropInputs, GroutedBoulderDropResult>;

const char* const usdcm_of_grouted_boulder_drop = "USDCM Vol. 2 (2001), p. HS-21";
const char* const table = "USDCM Vol. 2, Table HS-4 (later 9-4) (from memory; confirm)";
const char* const simplified =
    "USDCM Vol. 2 (2017), Table 9-1, simplified design (from uncertain memory; confirm)";

struct BoulderRow {
  double below;
  double nominal_in;
};
constexpr BoulderRow boulders[] = {{5.00, 18}, {5.60, 24}, {6.40, 30}, {7.00, 36}, {7.50, 42}};
constexpr double table_end = 8.00;
constexpr double largest_in = 48;

MethodDescription describe_grouted_boulder_drop() {
  MethodDescription about;
  about.id = "grouted-boulder-drop";
  about.title = "Grouted sloping boulder drop";
  about.purpose =
      "Nominal boulder size and grout thickness of a low grouted sloping drop by the simplified "
      "critical-velocity procedure.";
  about.group = MethodGroup::rock_size;
  about.sources = {
      {"Urban Storm Drainage Criteria Manual (USDCM) Vol. 2 (2001)",
       "p. HS-21: grouting, limit of the simplified procedure", SourceStanding::published},
      {"Urban Storm Drainage Criteria Manual (USDCM) Vol. 2",
       "Table HS-4, later 9-4: boulders by the rock parameter", SourceStanding::memory}};
  about.cautions = {
      "Boulders of one size; grout from the subgrade to half the nominal rock, never above two "
      "thirds of its least dimension.",
      "Above a drop of 5 ft a full hydraulic and seepage design is asked for.",
      "Seepage and uplift: check the weighted creep and the drains under the grout."};
  return about;
}

void describe_limits(DescribedGroutedBoulderDrop& method) {
  method.limit({"Drop at most 5 ft", usdcm_of_grouted_boulder_drop},
               [](const GroutedBoulderDropInputs& in) {
                 return !in.drop_height || in.drop_height->feet() < 5 + 1e-9;
               });
  method.limit({"Unit discharge at most 35 ft²/s", simplified},
               [](const GroutedBoulderDropInputs& in) {
                 Steps unread;
                 const auto q = unit_discharge_of(in, unread);
                 return q && q->square_feet_per_second() < 35 + 1e-9;
               });
  method.limit({"Face 4H:1V or flatter", simplified},
               [](const GroutedBoulderDropInputs& in) { return in.slope.ratio() < 0.25 + 1e-9; });
}

DescribedGroutedBoulderDrop build_grouted_boulder_drop() {
  DescribedGroutedBoulderDrop method(describe_grouted_boulder_drop(), &grouted_boulder_drop);
  describe_chute_flow(method);
  method.required({"slope", "S", "slope of the face"}, &GroutedBoulderDropInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(1));
  method.optional({"drop_height", "", "height of the drop"}, &GroutedBoulderDropInputs::drop_height,
                  unit::foot, AllowedRange::positive_to(100), "its limit is not watched");
  method.defaulted({"specific_gravity", "Ss", "specific gravity of the rock"},
                   &GroutedBoulderDropInputs::specific_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.output({"unit_discharge", "q", "discharge for each unit of width"},
                &GroutedBoulderDropResult::unit_discharge, unit::square_foot_per_second);
  method.output({"critical_depth", "yc", "critical depth over the crest"},
                &GroutedBoulderDropResult::critical_depth, unit::foot);
  method.output({"critical_velocity", "Vc", "critical velocity"},
                &GroutedBoulderDropResult::critical_velocity, unit::foot_per_second);
  method.output({"approach_depth", "Hmin", "least energy over the crest"},
                &GroutedBoulderDropResult::approach_depth, unit::foot);
  method.output({"rock_parameter", "Rp", "Vc·S^0.17/(Ss−1)^0.66"},
                &GroutedBoulderDropResult::rock_parameter, unit::number);
  method.output({"boulder", "", "nominal boulder"}, &GroutedBoulderDropResult::boulder, unit::inch,
                LengthUse::rock);
  method.output({"grout", "", "thickness of the grout"}, &GroutedBoulderDropResult::grout,
                unit::inch);
  describe_limits(method);
  return method;
}

}  // namespace

std::optional<Length> boulder_for(Dimensionless rock_parameter) {
  const double Rp = rock_parameter.number();
  for (const BoulderRow& row : boulders) {
    if (Rp < row.below) return Length::inches(row.nominal_in);
  }
  if (Rp <= table_end) return Length::inches(largest_in);
  return std::nullopt;
}

Expected<GroutedBoulderDropResult> grouted_boulder_drop(const GroutedBoulderDropInputs& inputs,
                                                        Steps& steps) {
  const auto q = unit_discharge_of(inputs, steps);
  if (!q) return q.problems();

  GroutedBoulderDropResult result;
  result.unit_discharge = *q;
  result.critical_depth = critical_depth(*q);
  result.critical_velocity = critical_velocity(*q, steps);
  result.approach_depth = 1.5 * result.critical_depth;
  result.rock_parameter =
      front_range_type_parameter(result.critical_velocity, inputs.slope, inputs.specific_gravity);
  steps.computed("Hmin", "least energy over the crest", "1.5·yc", measure(result.approach_depth));
  steps.given("S", "slope of the face", measure(inputs.slope));
  steps.given("Ss", "specific gravity of the rock", measure(inputs.specific_gravity));
  steps.computed("Rp", "rock parameter", "Vc·S^0.17/(Ss−1)^0.66 (ft/s)",
                 measure(result.rock_parameter), table);
  const auto boulder = boulder_for(result.rock_parameter);
  if (!boulder) {
    return Problem{"beyond-table",
                   fmt::format("The rock parameter is {:.2f}; the table of boulders ends at 8.00.",
                               result.rock_parameter.number()),
                   "", "/slope", "a flatter face, or less discharge for each unit of width"};
  }
  result.boulder = *boulder;
  result.grout = 0.5 * result.boulder;
  steps.given_rock("", "nominal boulder for that parameter", result.boulder, table);
  steps.computed("", "thickness of the grout from the subgrade", "half the nominal boulder",
                 measure(result.grout), usdcm_of_grouted_boulder_drop);
  return result;
}

const Method& grouted_boulder_drop_method() {
  static const DescribedGroutedBoulderDrop method = build_grouted_boulder_drop();
  return method;
}

}  // namespace proofstone
