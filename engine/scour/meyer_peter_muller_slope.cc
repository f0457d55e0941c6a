#include "engine/scour/meyer_peter_muller_slope.h"

#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

const char* const page_of_meyer_peter_muller_slope =
    "USBR, Pemberton and Lara, Computing Degradation and Local Scour (1984) (from memory; confirm)";

TypedMethod<MeyerPeterMullerInputs, MeyerPeterMullerResult> build_meyer_peter_muller_slope() {
  MethodDescription about;
  about.id = "meyer-peter-muller-slope";
  about.title = "Limiting slope by Meyer-Peter and Müller";
  about.purpose = "Slope to which a coarse bed flattens when little sediment comes from upstream.";
  about.group = MethodGroup::scour;
  about.sources = {{"USBR, Pemberton and Lara, Computing Degradation and Local Scour (1984)",
                    "Meyer-Peter and Müller's equation", SourceStanding::memory}};
  about.cautions = {"It holds for a bed that gets no sediment; supply makes the slope steeper."};
  TypedMethod<MeyerPeterMullerInputs, MeyerPeterMullerResult> method(about,
                                                                     &meyer_peter_muller_slope);
  method.defaulted({"discharge_ratio", "Q/Q_B", "whole discharge over that above the bed"},
                   &MeyerPeterMullerInputs::discharge_ratio, unit::number,
                   AllowedRange::between(1, 5));
  method.required({"bed_roughness", "n_s", "Manning's n of the bed"},
                  &MeyerPeterMullerInputs::bed_roughness, unit::number,
                  AllowedRange::between(0.005, 0.5));
  method.required({"d90", "D90", "size that 90 % of the bed is finer than"},
                  &MeyerPeterMullerInputs::d90, unit::millimeter, AllowedRange::positive_to(1000),
                  LengthUse::rock);
  method.required({"bed_grain", "D", "mean grain size of the bed"},
                  &MeyerPeterMullerInputs::bed_grain, unit::millimeter,
                  AllowedRange::positive_to(500), LengthUse::rock);
  method.required({"depth", "d", "mean depth"}, &MeyerPeterMullerInputs::depth, unit::foot,
                  AllowedRange::positive_to(200));
  method.output({"limiting_slope", "S_L", "slope at which the bed moves no more"},
                &MeyerPeterMullerResult::limiting_slope, unit::rise_per_run);
  return method;
}

}  // namespace

Expected<MeyerPeterMullerResult> meyer_peter_muller_slope(const MeyerPeterMullerInputs& inputs,
                                                          Steps& steps) {
  const double n_s = inputs.bed_roughness.number();
  const double D90 = inputs.d90.millimeters();
  const double D = inputs.bed_grain.millimeters();
  const double d = inputs.depth.feet();
  const double grain_share = std::pow(n_s / std::pow(D90, 1.0 / 6), 1.5);
  MeyerPeterMullerResult result;
  result.limiting_slope =
      Slope::ratio(0.19 * inputs.discharge_ratio.number() * grain_share * D / d);
  steps.given("Q/Q_B", "whole discharge over that above the bed", measure(inputs.discharge_ratio));
  steps.given("n_s", "Manning's n of the bed", measure(inputs.bed_roughness));
  steps.given_rock("D90", "size that 90 % of the bed is finer than", inputs.d90);
  steps.given_rock("D", "mean grain size of the bed", inputs.bed_grain);
  steps.given("d", "mean depth", measure(inputs.depth));
  steps.computed("S_L", "limiting slope", "0.19·(Q/Q_B)·(n_s/D90^⅙)^1.5·D/d (mm, ft)",
                 measure(result.limiting_slope), page_of_meyer_peter_muller_slope);
  return result;
}

const Method& meyer_peter_muller_slope_method() {
  static const TypedMethod<MeyerPeterMullerInputs, MeyerPeterMullerResult> method =
      build_meyer_peter_muller_slope();
  return method;
}

}  // namespace proofstone
