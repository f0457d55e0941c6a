#include "engine/waves/smb_wave_growth.h"

#include <cmath>
#include <numbers>

#include "engine/waves/growth_factors.h"

namespace proofstone {
namespace {

const char* const smb = "USACE Shore Protection Manual (1977) (from memory; confirm)";

TypedMethod<SmbWaveGrowthInputs, SmbWaveGrowthResult> build_smb_wave_growth() {
  MethodDescription about;
  about.id = "smb-wave-growth";
  about.title = "Wave growth, Shore Protection Manual 1977";
  about.purpose =
      "Significant wave height and period in shallow water from the wind speed as it stands; the "
      "older procedure of low-cost shore protection.";
  about.group = MethodGroup::water;
  about.sources = {{"USACE Shore Protection Manual (1977); Low Cost Shore Protection (1981)",
                    "shallow-water forecasting curves after Sverdrup, Munk and Bretschneider",
                    SourceStanding::memory}};
  about.cautions = {"It takes the wind speed itself, not the adjusted speed of the manual of 1984.",
                    "It supposes that the wind lasts long enough for the fetch."};
  TypedMethod<SmbWaveGrowthInputs, SmbWaveGrowthResult> method(about, &smb_wave_growth);
  method.required({"wind", "U", "wind speed over water"}, &SmbWaveGrowthInputs::wind,
                  unit::mile_per_hour, AllowedRange::positive_to(250));
  method.required({"fetch", "F", "fetch"}, &SmbWaveGrowthInputs::fetch, unit::foot,
                  AllowedRange::positive_to(5e6));
  method.required({"depth", "d", "mean depth over the fetch"}, &SmbWaveGrowthInputs::depth,
                  unit::foot, AllowedRange::positive_to(3000));
  method.output({"height", "Hs", "significant wave height"}, &SmbWaveGrowthResult::height,
                unit::foot);
  method.output({"period", "T", "significant period"}, &SmbWaveGrowthResult::period, unit::second);
  return method;
}

}  // namespace

Expected<SmbWaveGrowthResult> smb_wave_growth(const SmbWaveGrowthInputs& inputs, Steps& steps) {
  const double U = inputs.wind.meters_per_second();
  const double gd_over_u2 = g_si * inputs.depth.meters() / (U * U);
  const double gf_over_u2 = g_si * inputs.fetch.meters() / (U * U);
  const double A = height_depth_factor(gd_over_u2);
  const double B = period_depth_factor(gd_over_u2);
  const double H = U * U / g_si * 0.283 * A * std::tanh(0.0125 * std::pow(gf_over_u2, 0.42) / A);
  const double T = 2 * std::numbers::pi * U / g_si * 1.20 * B *
                   std::tanh(0.077 * std::pow(gf_over_u2, 0.25) / B);

  SmbWaveGrowthResult result;
  result.height = Length::meters(H);
  result.period = Duration::seconds(T);
  steps.given("U", "wind speed over water", measure(inputs.wind));
  steps.given("F", "fetch", measure(inputs.fetch));
  steps.given("d", "mean depth", measure(inputs.depth));
  steps.computed("A", "depth factor of height", "tanh[0.530·(g·d/U²)^¾]", measure(A), smb);
  steps.computed("B", "depth factor of period", "tanh[0.833·(g·d/U²)^⅜]", measure(B), smb);
  steps.computed("Hs", "significant wave height", "U²/g·0.283·A·tanh[0.0125·(g·F/U²)^0.42/A]",
                 measure(result.height), smb);
  steps.computed("T", "significant period", "2π·U/g·1.20·B·tanh[0.077·(g·F/U²)^¼/B]",
                 measure(result.period), smb);
  return result;
}

const Method& smb_wave_growth_method() {
  static const TypedMethod<SmbWaveGrowthInputs, SmbWaveGrowthResult> method =
      build_smb_wave_growth();
  return method;
}

}  // namespace proofstone
