#include "engine/chute/chute_flow.h"

#include <cmath>

namespace proofstone {

namespace {

Problem missing(const char* key, const char* what) {
  return {"missing-input", what, "", std::string("/") + key,
          "unit_discharge, or both discharge and width"};
}

}  // namespace

Expected<UnitDischarge> unit_discharge_of(const ChuteFlow& flow) {
  if (flow.unit_discharge) return *flow.unit_discharge;
  Problems problems;
  if (!flow.discharge) {
    problems.push_back(missing("discharge", "The discharge down the chute is not known."));
  }
  if (!flow.width) {
    problems.push_back(missing("width", "The width the water runs over is not known."));
  }
  if (!problems.empty()) return problems;
  return UnitDischarge::square_meters_per_second(flow.discharge->cubic_meters_per_second() /
                                                 flow.width->meters());
}

Expected<UnitDischarge> unit_discharge_of(const ChuteFlow& flow, Steps& steps) {
  auto q = unit_discharge_of(flow);
  if (!q) return q;
  if (flow.unit_discharge) {
    steps.given("q", "discharge for each unit of width", measure(*q));
    return q;
  }
  steps.given("Q", "discharge", measure(*flow.discharge));
  steps.given("b", "width it runs over", measure(*flow.width));
  steps.computed("q", "discharge for each unit of width", "Q/b", measure(*q));
  return q;
}

Problem face_too_steep() {
  return {"face-too-steep",
          "The face is as steep as the rock's angle of repose or steeper; loose rock does not stay "
          "on it.",
          "", "/slope", "a face flatter than angle_of_repose"};
}

void take_chute_flow(const ZoneSetting& zone, ChuteFlow& flow) {
  flow.discharge = zone.stated.discharge;
}

Length critical_depth(UnitDischarge q) {
  const double g = standard_gravity.meters_per_second_squared();
  const double per_width = q.square_meters_per_second();
  return Length::meters(std::pow(per_width * per_width / g, 1.0 / 3.0));
}

}  // namespace proofstone
