#include "engine/grade_control/loose_rock_drop_table.h"
#include "engine/sizing/typed_sizing_method.h"

#include <string>

namespace proofstone {

namespace {

using DescribedLooseRockDropTable =
    TypedSizingMethod<LooseRockDropTableInputs, LooseRockDropTableResult>;

const char* const file =
    "Colorado Water Conservation Board, file 60182, printed pp. 8–9, Table 1, row 25 ft²/s";

constexpr double row_fps = 25;

struct FaceRow {
  double flattest_run;  ///< horizontal for each unit of fall
  double d50_in;
  double layer_ft;
  const char* type;
};
constexpr FaceRow faces[] = {{10, 12, 1.75, "M"}, {6, 18, 2.6, "H"}, {4, 24, 3.5, "VH"}};

const FaceRow* row_for(Slope slope) {
  for (const FaceRow& row : faces) {
    if (slope.ratio() * row.flattest_run < 1 + 1e-9) return &row;
  }
  return nullptr;
}

/// The table asks for the approach, which a zone on the face does not tell.
std::variant<LooseRockDropTableInputs, NotApplicable> loose_rock_drop_table_from_zone(
    const ZoneSetting&) {
  return LooseRockDropTableInputs{};
}

MethodDescription describe_loose_rock_drop_table() {
  MethodDescription about;
  about.id = "loose-rock-drop-table";
  about.title = "Loose-rock drop by table";
  about.purpose =
      "Type of rock, layer, apron and crest rise of a low sloping loose-rock drop, for a unit "
      "discharge up to 25 ft²/s.";
  about.group = MethodGroup::rock_size;
  about.sources = {{"Colorado Water Conservation Board, file 60182 (title page not seen)",
                    "printed pp. 8–9: Table 1 and example", SourceStanding::published}};
  about.cautions = {
      "Only the row for 25 ft²/s could be read; it is used for every smaller unit discharge, where "
      "it asks for more than it must.",
      "On a face of 10H:1V the table has smaller rock than the equation of velocity and slope at a "
      "specific gravity of 2.5.",
      "The piping check (weighted creep) is a step of its own."};
  return about;
}

DescribedLooseRockDropTable build_loose_rock_drop_table() {
  DescribedLooseRockDropTable method(
      describe_loose_rock_drop_table(), &loose_rock_drop_table, &loose_rock_drop_table_from_zone,
      [](const LooseRockDropTableResult& result) { return RequiredSize{50, result.d50}; },
      {ZonePlace::drop});
  method.required({"normal_velocity", "Vn", "velocity of the approach"},
                  &LooseRockDropTableInputs::normal_velocity, unit::foot_per_second,
                  AllowedRange::positive_to(60));
  method.required({"normal_depth", "Yn", "depth of the approach"},
                  &LooseRockDropTableInputs::normal_depth, unit::foot,
                  AllowedRange::positive_to(100));
  method.required({"slope", "S", "slope of the face"}, &LooseRockDropTableInputs::slope,
                  unit::rise_per_run, AllowedRange::positive_to(1));
  method.output({"unit_discharge", "q", "discharge for each unit of width"},
                &LooseRockDropTableResult::unit_discharge, unit::square_foot_per_second);
  method.output({"d50", "d50", "median size of the type"}, &LooseRockDropTableResult::d50,
                unit::inch, LengthUse::rock);
  method.output({"layer_thickness", "Dr", "rock layer"}, &LooseRockDropTableResult::layer_thickness,
                unit::foot);
  method.output({"apron_length", "LB", "apron at the foot"},
                &LooseRockDropTableResult::apron_length, unit::foot);
  method.output({"crest_rise", "P", "rise of the crest wall"},
                &LooseRockDropTableResult::crest_rise, unit::foot);
  return method;
}

}  // namespace

Expected<LooseRockDropTableResult> loose_rock_drop_table(const LooseRockDropTableInputs& inputs,
                                                         Steps& steps) {
  const double q = inputs.normal_velocity.feet_per_second() * inputs.normal_depth.feet();
  if (q > row_fps + 1e-9) {
    return Problem{"beyond-table", "The unit discharge Vn·Yn is above 25 ft²/s, the row at hand.",
                   "", "/normal_velocity", "a unit discharge up to 25 ft²/s (2.32 m²/s)"};
  }
  const FaceRow* const row = row_for(inputs.slope);
  if (row == nullptr) {
    return Problem{"beyond-table", "The table has no loose rock for a face steeper than 4H:1V.", "",
                   "/slope", "a face of 4H:1V or flatter"};
  }

  LooseRockDropTableResult result;
  result.unit_discharge = UnitDischarge::square_feet_per_second(q);
  result.d50 = Length::inches(row->d50_in);
  result.layer_thickness = Length::feet(row->layer_ft);
  result.apron_length = Length::feet(20);
  result.crest_rise = Length::feet(0.3);
  steps.given("Vn", "velocity of the approach", measure(inputs.normal_velocity));
  steps.given("Yn", "depth of the approach", measure(inputs.normal_depth));
  steps.computed("q", "discharge for each unit of width", "Vn·Yn", measure(result.unit_discharge),
                 file);
  steps.given("S", "slope of the face", measure(inputs.slope));
  steps.given_rock("d50", std::string("rock for that face: type ") + row->type, result.d50, file);
  steps.given("Dr", "rock layer", measure(result.layer_thickness), file);
  steps.given("LB", "apron at the foot", measure(result.apron_length), file);
  steps.given("P", "rise of the crest wall", measure(result.crest_rise), file);
  return result;
}

const SizingMethod& loose_rock_drop_table_method() {
  static const DescribedLooseRockDropTable method = build_loose_rock_drop_table();
  return method;
}

}  // namespace proofstone
