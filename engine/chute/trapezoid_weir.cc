#include "engine/chute/trapezoid_weir.h"

#include <cmath>

namespace proofstone {

namespace {

using DescribedTrapezoidWeir = TypedMethod<TrapezoidWeirInputs, TrapezoidWeirResult>;

const char* const usdcm_of_trapezoid_weir = "USDCM Vol. 2, Storage (from memory; confirm)";

MethodDescription describe_trapezoid_weir() {
  MethodDescription about;
  about.id = "trapezoid-weir";
  about.title = "Broad trapezoidal crest";
  about.purpose =
      "Discharge over a broad trapezoidal crest, and the unit discharge over its level part, which "
      "the rock below it is sized for.";
  about.group = MethodGroup::water;
  about.sources = {{"Urban Storm Drainage Criteria Manual (USDCM) Vol. 2",
                    "storage: spillway crests", SourceStanding::memory}};
  about.cautions = {
      "The coefficient depends on head and breadth of the crest; 3.0 is a usual value for a broad "
      "one, less for rough cover."};
  return about;
}

DescribedTrapezoidWeir build_trapezoid_weir() {
  DescribedTrapezoidWeir method(describe_trapezoid_weir(), &trapezoid_weir);
  method.required({"length", "L", "length of the level crest, across the flow"},
                  &TrapezoidWeirInputs::length, unit::foot, AllowedRange::positive_to(1e5));
  method.required({"head", "H", "head over the crest"}, &TrapezoidWeirInputs::head, unit::foot,
                  AllowedRange::positive_to(100));
  method.defaulted({"side_slope", "Z", "horizontal for 1 vertical at the ends"},
                   &TrapezoidWeirInputs::side_slope, unit::number, AllowedRange::between(0, 50));
  method.defaulted({"coefficient", "C", "weir coefficient, ft units"},
                   &TrapezoidWeirInputs::coefficient, unit::number,
                   AllowedRange::between(1.5, 4.5));
  method.output({"rectangle", "", "over the level crest"}, &TrapezoidWeirResult::rectangle,
                unit::cubic_foot_per_second);
  method.output({"sides", "", "over both sloping ends"}, &TrapezoidWeirResult::sides,
                unit::cubic_foot_per_second);
  method.output({"discharge", "Q", "discharge"}, &TrapezoidWeirResult::discharge,
                unit::cubic_foot_per_second);
  method.output({"unit_discharge", "q", "over each unit of the level crest"},
                &TrapezoidWeirResult::unit_discharge, unit::square_foot_per_second);
  return method;
}

}  // namespace

UnitDischarge crest_unit_discharge(Dimensionless coefficient, Length head) {
  return UnitDischarge::square_feet_per_second(coefficient.number() * std::pow(head.feet(), 1.5));
}

Expected<TrapezoidWeirResult> trapezoid_weir(const TrapezoidWeirInputs& inputs, Steps& steps) {
  const double C = inputs.coefficient.number();
  const double L = inputs.length.feet();
  const double H = inputs.head.feet();
  const double Z = inputs.side_slope.number();

  TrapezoidWeirResult result;
  result.rectangle = Discharge::cubic_feet_per_second(C * L * std::pow(H, 1.5));
  result.sides = Discharge::cubic_feet_per_second(4.0 / 5.0 * C * Z * std::pow(H, 2.5));
  result.discharge = result.rectangle + result.sides;
  result.unit_discharge = crest_unit_discharge(inputs.coefficient, inputs.head);
  steps.given("L", "length of the level crest", measure(inputs.length));
  steps.given("H", "head over it", measure(inputs.head));
  steps.given("Z", "side slope of the ends", measure(inputs.side_slope));
  steps.given("C", "weir coefficient, ft units", measure(inputs.coefficient),
              usdcm_of_trapezoid_weir);
  steps.computed("", "over the level crest", "C·L·H^1.5 (ft, ft³/s)", measure(result.rectangle),
                 usdcm_of_trapezoid_weir);
  steps.computed("", "over both sloping ends", "(4/5)·C·Z·H^2.5 (ft, ft³/s)", measure(result.sides),
                 usdcm_of_trapezoid_weir);
  steps.computed("Q", "discharge", "both together", measure(result.discharge));
  steps.computed("q", "over each unit of the level crest", "C·H^1.5 (ft, ft²/s)",
                 measure(result.unit_discharge), usdcm_of_trapezoid_weir);
  return result;
}

const Method& trapezoid_weir_method() {
  static const DescribedTrapezoidWeir method = build_trapezoid_weir();
  return method;
}

}  // namespace proofstone
