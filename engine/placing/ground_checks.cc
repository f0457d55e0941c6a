#include "engine/placing/placing_design.h"

namespace proofstone {
namespace {

const char* const shore_guide = "USACE, Low Cost Shore Protection guide";

void add_toe(const PlacingDesign& design, std::vector<PlacingCheck>& checks) {
  if (design.toe_depth && design.toe_depth->meters() > 0) {
    PlacingCheck toe;
    toe.id = "toe";
    toe.title = "Depth of the toe";
    toe.measure = CheckMeasure::at_least;
    toe.hold_point = true;
    toe.required = "The trench of the toe reaches its depth below the bed";
    toe.design = "toe/depth of the zone; finding \"toe\"";
    toe.asked = design.toe_depth;
    toe.reads_as_ground = true;
    put_tolerance(toe, design.tolerances, design.tolerances.thickness, std::nullopt,
                  {shore_guide, "sample specification: armour and toe built to at least the line",
                   SourceStanding::published});
    toe.how = "level on the bottom of the trench against the bed beside it, before rock covers it";
    toe.fewest_points = 3;
    checks.push_back(std::move(toe));
  }
  if (design.toe_stored) {
    PlacingCheck stored;
    stored.id = "toe-rock";
    stored.title = "Rock stored at the toe";
    stored.required = "The section of rock stored at the toe is as drawn";
    stored.design = "toe/stored of the zone; finding \"toe\"";
    stored.source = usual("the stored section is shot before it is paid for");
    stored.how = "section across the stored rock, or loads placed for each length of toe";
    checks.push_back(std::move(stored));
  }
}

}  // namespace

void add_ground_checks(const PlacingDesign& design, std::vector<PlacingCheck>& checks) {
  PlacingCheck subgrade;
  subgrade.id = "subgrade";
  subgrade.title = "Subgrade";
  subgrade.measure = CheckMeasure::within;
  subgrade.reads_as_ground = true;
  subgrade.hold_point = true;
  subgrade.required =
      "Trimmed to the lines drawn, firm, without roots, soft places, clods and stones that stand "
      "out";
  subgrade.design = "section and slope of the zone";
  put_tolerance(subgrade, design.tolerances, design.tolerances.subgrade, Length::feet(0.1),
                {"UFGS 02300", "trimmed area under the rock within 30 mm (0.1 ft)",
                 SourceStanding::published});
  subgrade.how = "rod and level, or a straight edge, square to the slope";
  subgrade.fewest_points = 3;
  checks.push_back(std::move(subgrade));
  add_toe(design, checks);
  if (!design.top_key) return;
  PlacingCheck key;
  key.id = "top-key";
  key.title = "Key at the top";
  key.measure = CheckMeasure::at_least;
  key.hold_point = true;
  key.required = "The trench at the top of the slope reaches its depth";
  key.design = "top_key/depth of the zone";
  key.asked = design.top_key->depth;
  key.reads_as_ground = true;
  put_tolerance(key, design.tolerances, design.tolerances.thickness, std::nullopt,
                usual("keys are at least as deep as drawn"));
  key.how = "tape in the open trench, before rock covers it";
  key.fewest_points = 3;
  checks.push_back(std::move(key));
}

}  // namespace proofstone
