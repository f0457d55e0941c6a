#include "engine/scour/schoklitsch_slope.h"

#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

const char* const page_of_schoklitsch_slope =
    "USBR, Pemberton and Lara, Computing Degradation and Local Scour (1984) (from memory; confirm)";

TypedMethod<SchoklitschInputs, SchoklitschResult> build_schoklitsch_slope() {
  MethodDescription about;
  about.id = "schoklitsch-slope";
  about.title = "Limiting slope by Schoklitsch";
  about.purpose = "Slope to which a bed flattens when little sediment comes from upstream.";
  about.group = MethodGroup::scour;
  about.sources = {{"USBR, Pemberton and Lara, Computing Degradation and Local Scour (1984)",
                    "Schoklitsch's equation", SourceStanding::memory}};
  about.cautions = {"It holds for a bed that gets no sediment; supply makes the slope steeper."};
  TypedMethod<SchoklitschInputs, SchoklitschResult> method(about, &schoklitsch_slope);
  method.required({"bed_grain", "D", "mean grain size of the bed"}, &SchoklitschInputs::bed_grain,
                  unit::millimeter, AllowedRange::positive_to(500), LengthUse::rock);
  method.required({"width", "B", "width of the bed"}, &SchoklitschInputs::width, unit::foot,
                  AllowedRange::positive_to(1e5));
  method.required({"discharge", "Q", "discharge that forms the channel"},
                  &SchoklitschInputs::discharge, unit::cubic_foot_per_second,
                  AllowedRange::positive_to(1e7));
  method.output({"limiting_slope", "S_L", "slope at which the bed moves no more"},
                &SchoklitschResult::limiting_slope, unit::rise_per_run);
  return method;
}

}  // namespace

Expected<SchoklitschResult> schoklitsch_slope(const SchoklitschInputs& inputs, Steps& steps) {
  const double D = inputs.bed_grain.millimeters();
  const double B = inputs.width.feet();
  const double Q = inputs.discharge.cubic_feet_per_second();
  SchoklitschResult result;
  result.limiting_slope = Slope::ratio(0.00174 * std::pow(D * B / Q, 0.75));
  steps.given_rock("D", "mean grain size of the bed", inputs.bed_grain);
  steps.given("B", "width of the bed", measure(inputs.width));
  steps.given("Q", "discharge", measure(inputs.discharge));
  steps.computed("S_L", "limiting slope", "0.00174·(D·B/Q)^¾ (mm, ft, ft³/s)",
                 measure(result.limiting_slope), page_of_schoklitsch_slope);
  return result;
}

const Method& schoklitsch_slope_method() {
  static const TypedMethod<SchoklitschInputs, SchoklitschResult> method = build_schoklitsch_slope();
  return method;
}

}  // namespace proofstone
