#include "engine/chute/spillway_critical_flow.h"

#include <cmath>
#include <string>

namespace proofstone {

namespace {

using DescribedSpillwayCriticalFlow =
    TypedMethod<SpillwayCriticalFlowInputs, SpillwayCriticalFlowResult>;

const char* const hec22 = "FHWA HEC-22 3rd ed. (2009) §8.4.4.4";

Problem missing_of_spillway(const char* key, const char* what) {
  return {"missing-input", what, "", std::string("/") + key,
          "discharge, or both head and coefficient"};
}

Expected<Discharge> crest_discharge(const SpillwayCriticalFlowInputs& in, Steps& steps) {
  if (in.discharge) {
    steps.given("Q", "discharge over the crest", measure(*in.discharge));
    return *in.discharge;
  }
  Problems problems;
  if (!in.head) {
    problems.push_back(
        missing_of_spillway("head", "Neither discharge nor head over the crest is known."));
  }
  if (!in.coefficient) {
    problems.push_back(
        missing_of_spillway("coefficient", "The discharge coefficient Csp is not known."));
  }
  if (!problems.empty()) return problems;
  const double Csp = in.coefficient->number();
  const double b = in.width.meters();
  const double Hp = in.head->meters();
  const auto Q = Discharge::cubic_meters_per_second(Csp * b * std::pow(Hp, 1.5));
  steps.given("Hp", "head over the crest", measure(*in.head));
  steps.given("Csp", "discharge coefficient, SI, from Fig. 8-18", measure(*in.coefficient));
  steps.computed("Q", "discharge over the crest", "Csp·b·Hp^1.5 (m, m³/s)", measure(Q),
                 std::string(hec22) + ", eq. 8-26");
  return Q;
}

void explain(const SpillwayCriticalFlowInputs& in, const SpillwayCriticalFlowResult& result,
             Steps& steps) {
  steps.given("b", "bottom width of the crest", measure(in.width));
  steps.computed("Q/b", "discharge for each unit of width", "", measure(result.unit_discharge));
  steps.computed("Vc", "critical velocity", "2.14·(Q/b)^0.33 (m/s, m²/s)",
                 measure(result.critical_velocity), std::string(hec22) + ", eq. 8-27");
  steps.given("n", "roughness: 0.040 turf, 0.015 paved", measure(in.roughness), hec22);
  steps.computed("Sc", "critical slope", "9.84·n²·(Vc·b/Q)^0.33 (m)",
                 measure(result.critical_slope), std::string(hec22) + ", eq. 8-28");
  if (!in.face_slope) return;
  steps.given("S",
              *in.face_slope > result.critical_slope
                  ? "slope of the face: steeper than critical, the flow is rapid; size its rock as "
                    "a chute"
                  : "slope of the face: not steeper than critical",
              measure(*in.face_slope));
}

MethodDescription describe_spillway_critical_flow() {
  MethodDescription about;
  about.id = "spillway-critical-flow";
  about.title = "Emergency spillway: critical velocity and slope";
  about.purpose =
      "Discharge over the crest of an emergency spillway, the critical velocity there, and the "
      "slope from which the face below runs rapid.";
  about.group = MethodGroup::water;
  about.sources = {
      {"FHWA HEC-22 3rd ed. (2009)", "§8.4.4.4, eqs. 8-26 to 8-28", SourceStanding::published}};
  about.cautions = {
      "Crest 0.3 to 0.6 m (1 to 2 ft) above the largest design storage; freeboard 0.6 m (2 ft), at "
      "the very least 0.3 m (1 ft) on small basins.",
      "Spillways of dams are a matter for the licensed engineer and the dam-safety authority."};
  return about;
}

DescribedSpillwayCriticalFlow build_spillway_critical_flow() {
  DescribedSpillwayCriticalFlow method(describe_spillway_critical_flow(), &spillway_critical_flow);
  method.optional({"discharge", "Q", "discharge over the crest"},
                  &SpillwayCriticalFlowInputs::discharge, unit::cubic_meter_per_second,
                  AllowedRange::positive_to(1e5), "from head and coefficient");
  method.optional({"head", "Hp", "head over the crest"}, &SpillwayCriticalFlowInputs::head,
                  unit::meter, AllowedRange::positive_to(30),
                  "needed where the discharge is not given");
  method.optional({"coefficient", "Csp", "discharge coefficient, SI, from Fig. 8-18"},
                  &SpillwayCriticalFlowInputs::coefficient, unit::number,
                  AllowedRange::between(0.5, 3), "needed where the discharge is not given");
  method.required({"width", "b", "bottom width of the crest"}, &SpillwayCriticalFlowInputs::width,
                  unit::meter, AllowedRange::positive_to(1e4));
  method.defaulted({"roughness", "n", "Manning's n: 0.040 turf, 0.015 paved"},
                   &SpillwayCriticalFlowInputs::roughness, unit::number,
                   AllowedRange::between(0.005, 0.5));
  method.optional({"face_slope", "S", "slope of the face below the crest"},
                  &SpillwayCriticalFlowInputs::face_slope, unit::rise_per_run,
                  AllowedRange::positive_to(2), "not compared");
  method.output({"discharge", "Q", "discharge over the crest"},
                &SpillwayCriticalFlowResult::discharge, unit::cubic_meter_per_second);
  method.output({"unit_discharge", "Q/b", "discharge for each unit of width"},
                &SpillwayCriticalFlowResult::unit_discharge, unit::square_meter_per_second);
  method.output({"critical_velocity", "Vc", "critical velocity"},
                &SpillwayCriticalFlowResult::critical_velocity, unit::meter_per_second);
  method.output({"critical_slope", "Sc", "critical slope"},
                &SpillwayCriticalFlowResult::critical_slope, unit::rise_per_run);
  return method;
}

}  // namespace

Expected<SpillwayCriticalFlowResult> spillway_critical_flow(
    const SpillwayCriticalFlowInputs& inputs, Steps& steps) {
  const auto discharge = crest_discharge(inputs, steps);
  if (!discharge) return discharge.problems();
  const double Q = discharge->cubic_meters_per_second();
  const double b = inputs.width.meters();
  const double n = inputs.roughness.number();

  const double Vc = 2.14 * std::pow(Q / b, 0.33);
  const double Sc = 9.84 * n * n * std::pow(Vc * b / Q, 0.33);

  SpillwayCriticalFlowResult result;
  result.discharge = *discharge;
  result.unit_discharge = UnitDischarge::square_meters_per_second(Q / b);
  result.critical_velocity = Velocity::meters_per_second(Vc);
  result.critical_slope = Slope::ratio(Sc);
  explain(inputs, result, steps);
  return result;
}

const Method& spillway_critical_flow_method() {
  static const DescribedSpillwayCriticalFlow method = build_spillway_critical_flow();
  return method;
}

}  // namespace proofstone
