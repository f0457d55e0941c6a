#include "engine/scour/neill_scour.h"

#include <cmath>

namespace proofstone {

namespace {

const char* const page_of_neill_scour = "Neill, by USBR (1984) (from memory; confirm)";

constexpr RegimeFactors neill_factors{0.5,          0.6, 0.7, std::nullopt,
                                      std::nullopt, 1.0, 0.7, std::nullopt};

TypedMethod<NeillScourInputs, RegimeScourResult> build_neill_scour() {
  MethodDescription about;
  about.id = "neill-scour";
  about.title = "General scour by Neill";
  about.purpose =
      "Depth to which a flood lowers the bed over a reach, from what the reach carries when it "
      "runs bank-full; one of the three regime formulas.";
  about.group = MethodGroup::scour;
  about.sources = regime_sources("Neill's equation");
  about.cautions = regime_cautions();
  TypedMethod<NeillScourInputs, RegimeScourResult> method(about, &neill_scour);
  method.required({"bankfull_depth", "d_i", "mean depth of the incised reach, bank-full"},
                  &NeillScourInputs::bankfull_depth, unit::foot, AllowedRange::positive_to(200));
  method.required({"bankfull_unit_discharge", "q_i",
                   "discharge for each unit of width of the incised reach, bank-full"},
                  &NeillScourInputs::bankfull_unit_discharge, unit::square_foot_per_second,
                  AllowedRange::positive_to(5000));
  method.required({"unit_discharge", "q", "design discharge for each unit of width"},
                  &NeillScourInputs::unit_discharge, unit::square_foot_per_second,
                  AllowedRange::positive_to(5000));
  method.defaulted({"exponent", "m", "0.67 for sand to 0.85 for coarse gravel"},
                   &NeillScourInputs::exponent, unit::number, AllowedRange::between(0.5, 1));
  describe_regime(method);
  method.limit({"Exponent from 0.67 (sand) to 0.85 (coarse gravel)", page_of_neill_scour},
               [](const NeillScourInputs& in) {
                 return in.exponent.number() >= 0.67 && in.exponent.number() <= 0.85;
               });
  method.limit(
      {"A design flow of at least the bank-full one", "common practice"},
      [](const NeillScourInputs& in) { return in.unit_discharge >= in.bankfull_unit_discharge; });
  return method;
}

}  // namespace

Expected<RegimeScourResult> neill_scour(const NeillScourInputs& inputs, Steps& steps) {
  const double ratio = inputs.unit_discharge / inputs.bankfull_unit_discharge;
  const double m = inputs.exponent.number();
  const Length d = std::pow(ratio, m) * inputs.bankfull_depth;
  steps.given("d_i", "mean bank-full depth", measure(inputs.bankfull_depth));
  steps.given("q_i", "bank-full discharge for each unit of width",
              measure(inputs.bankfull_unit_discharge));
  steps.given("q", "design discharge for each unit of width", measure(inputs.unit_discharge));
  steps.given("m", "exponent of the bed material", measure(inputs.exponent), page_of_neill_scour);
  steps.computed("d", "regime depth", "d_i·(q/q_i)^m", measure(d), page_of_neill_scour);
  return scour_from_regime(d, inputs, neill_factors, steps);
}

const Method& neill_scour_method() {
  static const TypedMethod<NeillScourInputs, RegimeScourResult> method = build_neill_scour();
  return method;
}

}  // namespace proofstone
