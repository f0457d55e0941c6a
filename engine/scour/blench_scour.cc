#include "engine/scour/blench_scour.h"

#include <cmath>

namespace proofstone {

namespace {

const char* const page_of_blench_scour = "Blench, by USBR (1984) (from memory; confirm)";
const char* const fit_page = "NRCS NEH 654 TS14B, fit of Blench's chart (from memory; confirm)";

/// The factor Z of which the fit is printed as one formula with the depth.
constexpr double z_of_fit = 0.6;

constexpr RegimeFactors blench_factors{0.6, 0.6, 0.6, 1.25, std::nullopt, 1.0, 1.75, 1.25};

TypedMethod<BlenchScourInputs, RegimeScourResult> build_blench_scour() {
  MethodDescription about;
  about.id = "blench-scour";
  about.title = "General scour by Blench";
  about.purpose =
      "Depth to which a flood lowers the bed over a reach, from discharge for each unit of width "
      "and the bed's own factor; one of the three regime formulas.";
  about.group = MethodGroup::scour;
  about.sources = regime_sources("Blench's equation");
  about.cautions = regime_cautions();
  TypedMethod<BlenchScourInputs, RegimeScourResult> method(about, &blench_scour);
  method.required({"unit_discharge", "q", "design discharge for each unit of width"},
                  &BlenchScourInputs::unit_discharge, unit::square_foot_per_second,
                  AllowedRange::positive_to(5000));
  method.optional({"bed_grain", "D50", "median grain size of the bed"},
                  &BlenchScourInputs::bed_grain, unit::millimeter, AllowedRange::positive_to(500),
                  "not needed when the bed factor is stated", LengthUse::rock);
  method.optional({"zero_bed_factor", "Fb", "zero bed factor in ft/s², from Blench's chart"},
                  &BlenchScourInputs::zero_bed_factor, unit::number, AllowedRange::positive_to(50),
                  "by the fit, from the grain size");
  describe_regime(method);
  return method;
}

}  // namespace

Expected<RegimeScourResult> blench_scour(const BlenchScourInputs& inputs, Steps& steps) {
  const double q = inputs.unit_discharge.square_feet_per_second();
  steps.given("q", "design discharge for each unit of width", measure(inputs.unit_discharge));
  double d = 0;
  if (inputs.zero_bed_factor) {
    const double Fb = inputs.zero_bed_factor->number();
    d = std::pow(q, 2.0 / 3) / std::pow(Fb, 1.0 / 3);
    steps.given("Fb", "zero bed factor, ft/s², stated", measure(Fb));
    steps.computed("d", "regime depth", "q^⅔/Fb^⅓", measure(Length::feet(d)), page_of_blench_scour);
  } else if (inputs.bed_grain) {
    const double D50 = inputs.bed_grain->millimeters();
    d = 0.530 / z_of_fit * std::pow(q, 2.0 / 3) * std::pow(D50, -0.1092);
    steps.given_rock("D50", "median grain size of the bed", *inputs.bed_grain);
    steps.computed("d", "regime depth", "0.530/0.6·q^⅔·D50^−0.1092, D50 in mm",
                   measure(Length::feet(d)), fit_page);
  } else {
    return Problem{"missing-input",
                   "Neither the bed's grain size nor its zero bed factor is known.", "",
                   "/bed_grain", "a length, or zero_bed_factor"};
  }
  return scour_from_regime(Length::feet(d), inputs, blench_factors, steps);
}

const Method& blench_scour_method() {
  static const TypedMethod<BlenchScourInputs, RegimeScourResult> method = build_blench_scour();
  return method;
}

}  // namespace proofstone
