#include "engine/scour/degradation_above_control.h"

#include <algorithm>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

TypedMethod<DegradationInputs, DegradationResult> build_degradation_above_control() {
  MethodDescription about;
  about.id = "degradation-above-control";
  about.title = "Lowering of a bed above a control";
  about.purpose =
      "How far a bed lowers itself over the years where its slope flattens above what holds it.";
  about.group = MethodGroup::scour;
  about.sources = {{"NRCS National Engineering Handbook Part 654 (2007)",
                    "Technical Supplement 14B, lowering above a control", SourceStanding::memory}};
  about.cautions = {"What holds the bed must itself stand.",
                    "Where the control lowers, the whole reach above it follows."};
  TypedMethod<DegradationInputs, DegradationResult> method(about, &degradation_above_control);
  method.required({"existing_slope", "S", "present slope of the bed"},
                  &DegradationInputs::existing_slope, unit::rise_per_run,
                  AllowedRange::positive_to(0.2));
  method.required({"limiting_slope", "S_L", "slope at which the bed moves no more"},
                  &DegradationInputs::limiting_slope, unit::rise_per_run,
                  AllowedRange::between(0, 0.2));
  method.required({"distance_to_control", "L", "distance down to what holds the bed"},
                  &DegradationInputs::distance_to_control, unit::foot,
                  AllowedRange::positive_to(1e6));
  method.output({"degradation", "zd", "lowering of the bed here"}, &DegradationResult::degradation,
                unit::foot);
  return method;
}

}  // namespace

Expected<DegradationResult> degradation_above_control(const DegradationInputs& inputs,
                                                      Steps& steps) {
  const double fall = std::max(0.0, (inputs.existing_slope - inputs.limiting_slope).ratio());
  DegradationResult result;
  result.degradation = fall * inputs.distance_to_control;
  steps.given("S", "present slope of the bed", measure(inputs.existing_slope));
  steps.given("S_L", "limiting slope", measure(inputs.limiting_slope));
  steps.given("L", "distance to what holds the bed", measure(inputs.distance_to_control));
  steps.computed("zd", "lowering of the bed here", "max(0, S − S_L)·L", measure(result.degradation),
                 "NRCS NEH 654 TS14B (2007) (from memory; confirm)");
  return result;
}

const Method& degradation_above_control_method() {
  static const TypedMethod<DegradationInputs, DegradationResult> method =
      build_degradation_above_control();
  return method;
}

}  // namespace proofstone
