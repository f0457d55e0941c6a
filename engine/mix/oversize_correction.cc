#include "engine/mix/oversize_correction.h"

namespace proofstone {

namespace {

using DescribedOversizeCorrection = TypedMethod<OversizeCorrectionInputs, OversizeCorrectionResult>;

DescribedOversizeCorrection build_oversize_correction() {
  MethodDescription about;
  about.id = "oversize-correction";
  about.title = "Oversize correction";
  about.purpose =
      "Dry unit weight and water content of compacted soil with rock in it, from a test on its "
      "finer "
      "part.";
  about.sources = {{"ASTM D4718", "scope, 1.3 to 1.6: the limits", SourceStanding::published},
                   {"ASTM D4718", "the formula", SourceStanding::memory}};
  about.cautions = {"Beyond the limits the coarse grains touch: no correction is known."};
  about.group = MethodGroup::mix;
  DescribedOversizeCorrection method(std::move(about), &oversize_correction);
  method.required({"fine_unit_weight", "γ_F", "dry unit weight of the finer part"},
                  &OversizeCorrectionInputs::fine_unit_weight, unit::pound_per_cubic_foot,
                  AllowedRange::between(30, 200));
  method.required({"oversize", "P_C", "oversize, share of the mass"},
                  &OversizeCorrectionInputs::oversize, unit::percent, AllowedRange::between(0, 95));
  method.defaulted({"oversize_gravity", "G_M", "bulk specific gravity of the oversize"},
                   &OversizeCorrectionInputs::oversize_gravity, unit::number,
                   AllowedRange::between(1.5, 4));
  method.defaulted({"fine_water", "w_F", "water content of the finer part"},
                   &OversizeCorrectionInputs::fine_water, unit::percent,
                   AllowedRange::between(0, 200));
  method.defaulted({"oversize_water", "w_C,o", "water content of the oversize"},
                   &OversizeCorrectionInputs::oversize_water, unit::percent,
                   AllowedRange::between(0, 50));
  method.choice({"sieve", "", "the sieve above which it counts"}, &OversizeCorrectionInputs::sieve,
                {ChoiceOption<OversizeSieve>{OversizeSieve::no_4, "no-4", "No. 4, 4.75 mm"},
                 {OversizeSieve::three_quarter_inch, "three-quarter-inch", "3/4 in, 19 mm"}});
  method.output({"unit_weight", "γ_C", "dry unit weight of the whole"},
                &OversizeCorrectionResult::unit_weight, unit::pound_per_cubic_foot);
  method.output({"water", "w_C", "water content of the whole"}, &OversizeCorrectionResult::water,
                unit::percent);
  method.limit({"at most 40 % above No. 4, or 30 % above 3/4 in", "ASTM D4718, scope"},
               [](const OversizeCorrectionInputs& in) {
                 const double most = in.sieve == OversizeSieve::no_4 ? 0.4 : 0.3;
                 return in.oversize.number() <= most + 1e-12;
               });
  method.limit(
      {"below 5 % the correction is left out unless asked for", "ASTM D4718, scope"},
      [](const OversizeCorrectionInputs& in) { return in.oversize.number() >= 0.05 - 1e-12; });
  return method;
}

}  // namespace

Expected<OversizeCorrectionResult> oversize_correction(const OversizeCorrectionInputs& inputs,
                                                       Steps& steps) {
  const double gamma_F = inputs.fine_unit_weight.pounds_per_cubic_foot();
  const double P_C = 100 * inputs.oversize.number();
  const double P_F = 100 - P_C;
  const double G_M_gamma_w = inputs.oversize_gravity.number() * 62.4;
  const double gamma_C = 100 * gamma_F * G_M_gamma_w / (gamma_F * P_C + G_M_gamma_w * P_F);
  OversizeCorrectionResult result;
  result.unit_weight = UnitWeight::pounds_per_cubic_foot(gamma_C);
  result.water = Dimensionless::number(
      (inputs.fine_water.number() * P_F + inputs.oversize_water.number() * P_C) / 100);
  steps.given("γ_F", "dry unit weight of the finer part", measure(inputs.fine_unit_weight));
  steps.given("P_C", "oversize", measure(inputs.oversize));
  steps.given("G_M", "its specific gravity", measure(inputs.oversize_gravity));
  steps.computed("γ_C", "dry unit weight of the whole",
                 "100·γ_F·G_M·γw/(γ_F·P_C + G_M·γw·P_F), γw = 62.4 lb/ft³",
                 measure(result.unit_weight));
  steps.computed("w_C", "water content of the whole", "(w_F·P_F + w_C,o·P_C)/100",
                 measure(result.water));
  return result;
}

const Method& oversize_correction_method() {
  static const DescribedOversizeCorrection method = build_oversize_correction();
  return method;
}

}  // namespace proofstone
