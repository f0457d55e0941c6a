#include "engine/scour/maynord_bend_scour.h"

#include <algorithm>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

const char* const page_of_maynord_bend_scour =
    "Maynord, Journal of Hydraulic Engineering 122(8), 1996 (coefficients from memory; confirm)";
const char* const limits_page = "Maynord, Journal of Hydraulic Engineering 122(8), 1996, abstract";

constexpr double least_radius_ratio = 1.5;
constexpr double most_radius_ratio = 10;
constexpr double least_aspect = 20;
constexpr double most_aspect = 125;

void describe_maynord_bend_scour_inputs(TypedMethod<MaynordBendInputs, MaynordBendResult>& method) {
  method.required({"bend_radius", "Rc", "centreline radius of the bend"},
                  &MaynordBendInputs::bend_radius, unit::foot, AllowedRange::positive_to(1e6));
  method.required({"width", "W", "water-surface width at the upstream end of the bend"},
                  &MaynordBendInputs::width, unit::foot, AllowedRange::positive_to(1e5));
  method.required({"crossing_depth", "Dmnc", "mean depth of the crossing upstream of the bend"},
                  &MaynordBendInputs::crossing_depth, unit::foot, AllowedRange::positive_to(200));
  method.defaulted({"safety_factor", "SF",
                    "1.00, 1.08 and 1.19 left about 25, 10 and 2 % of the observed depths above "
                    "the prediction (recalled with doubt)"},
                   &MaynordBendInputs::safety_factor, unit::number, AllowedRange::between(1, 2));
  method.optional({"existing_depth", "d_e", "greatest depth in the bend as it stands"},
                  &MaynordBendInputs::existing_depth, unit::foot, AllowedRange::positive_to(200),
                  "the mean depth of the crossing");
  method.optional({"overbank_ratio", "", "overbank depth over channel depth"},
                  &MaynordBendInputs::overbank_ratio, unit::number, AllowedRange::between(0, 2),
                  "no water on the overbank");
}

TypedMethod<MaynordBendInputs, MaynordBendResult> build_maynord_bend_scour() {
  MethodDescription about;
  about.id = "maynord-bend-scour";
  about.title = "Bend scour by Maynord";
  about.purpose =
      "Greatest depth at the outer toe of a stabilised bend, from its radius, width and depth.";
  about.group = MethodGroup::scour;
  about.sources = {
      {"Maynord, Toe-scour estimation in stabilized bendways (1996)",
       "Journal of Hydraulic Engineering 122(8):460, limits", SourceStanding::published},
      {"Maynord, Toe-scour estimation in stabilized bendways (1996)",
       "coefficients and safety factors", SourceStanding::memory}};
  about.cautions = {"The depth is from the water surface: it holds the existing depth.",
                    "A fit of observed bends: at a safety factor of 1, one bend in four scoured "
                    "deeper."};
  TypedMethod<MaynordBendInputs, MaynordBendResult> method(about, &maynord_bend_scour);
  describe_maynord_bend_scour_inputs(method);
  method.output({"bend_depth", "Dmb", "greatest depth in the bend, from the water surface"},
                &MaynordBendResult::bend_depth, unit::foot);
  method.output({"scour", "d_s", "bend scour below the bed"}, &MaynordBendResult::scour,
                unit::foot);
  method.limit({"Rc/W from 1.5 to 10", limits_page}, [](const MaynordBendInputs& in) {
    const double ratio = in.bend_radius / in.width;
    return ratio >= least_radius_ratio && ratio <= most_radius_ratio;
  });
  method.limit({"W/Dmnc from 20 to 125", limits_page}, [](const MaynordBendInputs& in) {
    const double aspect = in.width / in.crossing_depth;
    return aspect >= least_aspect && aspect <= most_aspect;
  });
  method.limit({"Overbank depth below 20 % of the channel depth", limits_page},
               [](const MaynordBendInputs& in) {
                 return !in.overbank_ratio || in.overbank_ratio->number() < 0.2;
               });
  return method;
}

}  // namespace

Expected<MaynordBendResult> maynord_bend_scour(const MaynordBendInputs& inputs, Steps& steps) {
  const double r_w = std::max(least_radius_ratio, inputs.bend_radius / inputs.width);
  const double w_d = std::max(least_aspect, inputs.width / inputs.crossing_depth);
  const double SF = inputs.safety_factor.number();
  const double ratio = SF * (1.8 - 0.051 * r_w + 0.0084 * w_d);
  // A very flat bend would otherwise come out shallower than its own crossing.
  const double bounded = std::max(1.0, ratio);

  MaynordBendResult result;
  result.bend_depth = bounded * inputs.crossing_depth;
  const Length bed = inputs.existing_depth.value_or(inputs.crossing_depth);
  result.scour = std::max(Length::feet(0), result.bend_depth - bed);
  steps.computed("Rc/W", "radius over width, at least 1.5", "max(1.5, Rc/W)", measure(r_w),
                 page_of_maynord_bend_scour);
  steps.computed("W/Dmnc", "width over mean depth of the crossing, at least 20", "max(20, W/Dmnc)",
                 measure(w_d), page_of_maynord_bend_scour);
  steps.given("SF", "safety factor", measure(inputs.safety_factor));
  steps.computed("Dmb/Dmnc", "greatest depth over mean depth, at least 1",
                 "SF·[1.8 − 0.051·(Rc/W) + 0.0084·(W/Dmnc)]", measure(bounded),
                 page_of_maynord_bend_scour);
  steps.given("Dmnc", "mean depth of the crossing", measure(inputs.crossing_depth));
  steps.computed("Dmb", "greatest depth in the bend", "(Dmb/Dmnc)·Dmnc", measure(result.bend_depth),
                 page_of_maynord_bend_scour);
  steps.given("d_e",
              inputs.existing_depth ? "greatest depth as it stands"
                                    : "existing depth: that of the crossing",
              measure(bed));
  steps.computed("d_s", "bend scour below the bed", "max(0, Dmb − d_e)", measure(result.scour));
  return result;
}

const Method& maynord_bend_scour_method() {
  static const TypedMethod<MaynordBendInputs, MaynordBendResult> method =
      build_maynord_bend_scour();
  return method;
}

}  // namespace proofstone
