#include "engine/scour/lacey_scour.h"

#include <cmath>

namespace proofstone {

namespace {

const char* const page_of_lacey_scour =
    "Lacey, by USBR (1984) and NRCS NEH 654 TS14B (from memory; confirm)";

constexpr RegimeFactors lacey_factors{0.25, 0.50, 0.75, 1.00, 1.25, std::nullopt, 1.75, 1.5};

TypedMethod<LaceyScourInputs, RegimeScourResult> build_lacey_scour() {
  MethodDescription about;
  about.id = "lacey-scour";
  about.title = "General scour by Lacey";
  about.purpose =
      "Depth to which a flood lowers a sand bed over a reach, from discharge and grain size; one "
      "of the three regime formulas.";
  about.group = MethodGroup::scour;
  about.sources = regime_sources("Lacey's equation");
  about.cautions = regime_cautions();
  TypedMethod<LaceyScourInputs, RegimeScourResult> method(about, &lacey_scour);
  method.required({"discharge", "Q", "design discharge"}, &LaceyScourInputs::discharge,
                  unit::cubic_foot_per_second, AllowedRange::positive_to(1e7));
  method.required({"bed_grain", "Dm", "mean grain size of the bed"}, &LaceyScourInputs::bed_grain,
                  unit::millimeter, AllowedRange::positive_to(500), LengthUse::rock);
  describe_regime(method);
  method.limit({"A bed of sand, not coarser than 2 mm", "common practice"},
               [](const LaceyScourInputs& in) { return in.bed_grain.millimeters() <= 2; });
  return method;
}

}  // namespace

Expected<RegimeScourResult> lacey_scour(const LaceyScourInputs& inputs, Steps& steps) {
  const double Q = inputs.discharge.cubic_feet_per_second();
  const double Dm = inputs.bed_grain.millimeters();
  const double f = 1.76 * std::sqrt(Dm);
  const double d = 0.47 * std::pow(Q / f, 1.0 / 3);
  steps.given("Q", "design discharge", measure(inputs.discharge));
  steps.given_rock("Dm", "mean grain size of the bed", inputs.bed_grain);
  steps.computed("f", "silt factor", "1.76·√Dm, Dm in mm", measure(f), page_of_lacey_scour);
  steps.computed("d", "regime depth", "0.47·(Q/f)^⅓", measure(Length::feet(d)),
                 page_of_lacey_scour);
  return scour_from_regime(Length::feet(d), inputs, lacey_factors, steps);
}

const Method& lacey_scour_method() {
  static const TypedMethod<LaceyScourInputs, RegimeScourResult> method = build_lacey_scour();
  return method;
}

}  // namespace proofstone
