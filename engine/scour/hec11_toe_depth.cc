#include "engine/scour/hec11_toe_depth.h"

#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

const char* const page_of_hec11_toe_depth =
    "FHWA HEC-11 (1989) eqs. 4 and 5 (from memory; confirm)";

constexpr double sand_below = 0.005;
constexpr double sand_scour = 12;

TypedMethod<Hec11ToeInputs, Hec11ToeResult> build_hec11_toe_depth() {
  MethodDescription about;
  about.id = "hec11-toe-depth";
  about.title = "HEC-11 toe scour";
  about.purpose =
      "First estimate of scour at the toe of a bank revetment from the bed's grain size alone.";
  about.group = MethodGroup::scour;
  about.sources = {
      {"FHWA HEC-11, Design of Riprap Revetment (1989)", "eqs. 4 and 5", SourceStanding::memory}};
  about.cautions = {
      "It knows neither discharge nor bend: use it beside, not in place of, a scour analysis.",
      "Counted from the lowest point of the bed, not from the toe of the bank."};
  TypedMethod<Hec11ToeInputs, Hec11ToeResult> method(about, &hec11_toe_depth);
  method.required({"bed_grain", "D50", "median grain size of the bed"}, &Hec11ToeInputs::bed_grain,
                  unit::foot, AllowedRange::positive_to(5), LengthUse::rock);
  method.output({"scour", "d_s", "toe scour below the lowest point of the bed"},
                &Hec11ToeResult::scour, unit::foot);
  return method;
}

}  // namespace

Expected<Hec11ToeResult> hec11_toe_depth(const Hec11ToeInputs& inputs, Steps& steps) {
  const double D50 = inputs.bed_grain.feet();
  Hec11ToeResult result;
  result.scour = Length::feet(D50 < sand_below ? sand_scour : 6.5 * std::pow(D50, -0.11));
  steps.given_rock("D50", "median grain size of the bed", inputs.bed_grain);
  steps.computed("d_s", "toe scour below the lowest point of the bed",
                 "12 ft where D50 < 0.005 ft, otherwise 6.5·D50^−0.11 (ft)", measure(result.scour),
                 page_of_hec11_toe_depth);
  return result;
}

const Method& hec11_toe_depth_method() {
  static const TypedMethod<Hec11ToeInputs, Hec11ToeResult> method = build_hec11_toe_depth();
  return method;
}

}  // namespace proofstone
