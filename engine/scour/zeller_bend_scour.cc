#include "engine/scour/zeller_bend_scour.h"

#include <algorithm>
#include <cmath>

#include "engine/method/typed_method.h"

namespace proofstone {

namespace {

const char* const page_of_zeller_bend_scour =
    "Zeller, by Simons, Li and Associates (1985) and ADWR (from memory; confirm)";

constexpr double straight_from = 10;
constexpr double sharpest = 0.5;
constexpr double bracket_of_sharpest = 0.828;

double bend_bracket(double radius_over_width) {
  if (radius_over_width >= straight_from) return 0;
  if (radius_over_width <= sharpest) return bracket_of_sharpest;
  return std::max(0.0, 2.1 * std::pow(0.25 / radius_over_width, 0.2) - 1);
}

TypedMethod<ZellerScourInputs, ZellerScourResult> build_zeller_bend_scour() {
  MethodDescription about;
  about.id = "zeller-bend-scour";
  about.title = "General and bend scour by Zeller";
  about.purpose = "General scour of a sand bed in a flood, and what a bend adds to it.";
  about.group = MethodGroup::scour;
  about.sources = {
      {"Simons, Li and Associates, for the Arizona Department of Water Resources "
       "(1985)",
       "Zeller's general and bend scour", SourceStanding::memory}};
  about.cautions = {"Made for sand-bed washes of the American Southwest."};
  TypedMethod<ZellerScourInputs, ZellerScourResult> method(about, &zeller_bend_scour);
  method.required({"greatest_depth", "Ymax", "greatest depth upstream of the bend"},
                  &ZellerScourInputs::greatest_depth, unit::foot, AllowedRange::positive_to(200));
  method.required({"hydraulic_depth", "Yh", "area over top width"},
                  &ZellerScourInputs::hydraulic_depth, unit::foot, AllowedRange::positive_to(200));
  method.required({"velocity", "V", "mean velocity"}, &ZellerScourInputs::velocity,
                  unit::foot_per_second, AllowedRange::positive_to(60));
  method.required({"energy_slope", "Se", "slope of the energy line"},
                  &ZellerScourInputs::energy_slope, unit::rise_per_run,
                  AllowedRange::positive_to(1));
  method.optional({"bend_radius", "Rc", "centreline radius of the bend"},
                  &ZellerScourInputs::bend_radius, unit::foot, AllowedRange::positive_to(1e6),
                  "a straight reach");
  method.optional({"top_width", "T", "top width"}, &ZellerScourInputs::top_width, unit::foot,
                  AllowedRange::positive_to(1e5), "a straight reach");
  method.output({"general_scour", "Zgs", "general scour"}, &ZellerScourResult::general_scour,
                unit::foot);
  method.output({"bend_scour", "Zbs", "bend scour"}, &ZellerScourResult::bend_scour, unit::foot);
  method.output({"scour", "d_s", "both together"}, &ZellerScourResult::scour, unit::foot);
  return method;
}

}  // namespace

Expected<ZellerScourResult> zeller_bend_scour(const ZellerScourInputs& inputs, Steps& steps) {
  if (inputs.bend_radius && !inputs.top_width) {
    return Problem{"missing-input", "Bend scour needs the top width.", "", "/top_width",
                   "a length"};
  }
  const double Ymax = inputs.greatest_depth.feet();
  const double Yh = inputs.hydraulic_depth.feet();
  const double V = inputs.velocity.feet_per_second();
  const double Se = inputs.energy_slope.ratio();
  const double C = 0.0685 * Ymax * std::pow(V, 0.8) / (std::pow(Yh, 0.4) * std::pow(Se, 0.3));

  ZellerScourResult result;
  result.general_scour = Length::feet(std::max(0.0, C - Ymax));
  steps.given("Ymax", "greatest depth", measure(inputs.greatest_depth));
  steps.given("Yh", "hydraulic depth", measure(inputs.hydraulic_depth));
  steps.given("V", "mean velocity", measure(inputs.velocity));
  steps.given("Se", "slope of the energy line", measure(inputs.energy_slope));
  steps.computed("C", "depth after general scour", "0.0685·Ymax·V^0.8/(Yh^0.4·Se^0.3) (ft, ft/s)",
                 measure(Length::feet(C)), page_of_zeller_bend_scour);
  steps.computed("Zgs", "general scour", "max(0, C − Ymax)", measure(result.general_scour),
                 page_of_zeller_bend_scour);
  if (inputs.bend_radius) {
    const double r_t = *inputs.bend_radius / *inputs.top_width;
    const double bracket = bend_bracket(r_t);
    result.bend_scour = Length::feet(C * bracket);
    steps.computed("Rc/T", "radius over top width", "", measure(r_t));
    steps.computed("k_b", "share of the bend",
                   "2.1·(0.25·T/Rc)^0.2 − 1; 0 where Rc/T ≥ 10, 0.828 where Rc/T ≤ 0.5",
                   measure(bracket), page_of_zeller_bend_scour);
    steps.computed("Zbs", "bend scour", "C·k_b", measure(result.bend_scour),
                   page_of_zeller_bend_scour);
  }
  result.scour = result.general_scour + result.bend_scour;
  steps.computed("d_s", "general and bend scour", "Zgs + Zbs", measure(result.scour),
                 page_of_zeller_bend_scour);
  return result;
}

const Method& zeller_bend_scour_method() {
  static const TypedMethod<ZellerScourInputs, ZellerScourResult> method = build_zeller_bend_scour();
  return method;
}

}  // namespace proofstone
