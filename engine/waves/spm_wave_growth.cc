#include "engine/waves/spm_wave_growth.h"

#include <algorithm>
#include <cmath>

#include "engine/waves/growth_factors.h"

namespace proofstone {
namespace {

const char* const spm = "USACE Shore Protection Manual (1984), Chapter 3 (from memory; confirm)";

/// Dimensionless height, period and duration at a dimensionless fetch gF/UA².
struct Growth {
  double height = 0;
  double period = 0;
  double duration = 0;
};

Growth deep_growth(double fetch) {
  return {std::min(1.6e-3 * std::sqrt(fetch), 0.2433),
          std::min(0.2857 * std::pow(fetch, 1.0 / 3), 8.134),
          std::min(68.8 * std::pow(fetch, 2.0 / 3), 7.15e4)};
}

Growth shallow_growth(double fetch, double depth) {
  const double A = height_depth_factor(depth);
  const double B = period_depth_factor(depth);
  Growth growth;
  growth.height = 0.283 * A * std::tanh(0.00565 * std::sqrt(fetch) / A);
  growth.period = 7.54 * B * std::tanh(0.0379 * std::pow(fetch, 1.0 / 3) / B);
  growth.duration = 537 * std::pow(growth.period, 7.0 / 3);
  return growth;
}

/// The dimensionless fetch at which a wind of this dimensionless duration just suffices.
double fetch_of_duration(double duration, std::optional<double> depth) {
  if (!depth) return std::pow(duration / 68.8, 1.5);
  const double B = period_depth_factor(*depth);
  const double period = std::pow(duration / 537, 3.0 / 7);
  return std::pow(B * std::atanh(period / (7.54 * B)) / 0.0379, 3);
}

MethodDescription describe_spm_wave_growth() {
  MethodDescription about;
  about.id = "spm-wave-growth";
  about.title = "Wave growth, Shore Protection Manual 1984";
  about.purpose =
      "Significant wave height and peak period from wind, fetch, depth and duration, on lakes and "
      "reservoirs.";
  about.group = MethodGroup::water;
  about.sources = {{"USACE Shore Protection Manual (1984)",
                    "Chapter 3, deep-water and shallow-water forecasting equations",
                    SourceStanding::memory}};
  about.cautions = {
      "It takes the adjusted speed UA, not the wind speed: see wind over water. The Coastal "
      "Engineering Manual takes friction velocity; never mix them."};
  return about;
}

TypedMethod<SpmWaveGrowthInputs, SpmWaveGrowthResult> build_spm_wave_growth() {
  TypedMethod<SpmWaveGrowthInputs, SpmWaveGrowthResult> method(describe_spm_wave_growth(),
                                                               &spm_wave_growth);
  method.required({"adjusted_wind", "UA", "adjusted wind speed"},
                  &SpmWaveGrowthInputs::adjusted_wind, unit::mile_per_hour,
                  AllowedRange::positive_to(300));
  method.required({"fetch", "F", "fetch"}, &SpmWaveGrowthInputs::fetch, unit::mile,
                  AllowedRange::positive_to(1000));
  method.optional({"depth", "d", "mean depth over the fetch"}, &SpmWaveGrowthInputs::depth,
                  unit::foot, AllowedRange::positive_to(3000), "deep water");
  method.optional({"duration", "t", "how long the wind blows"}, &SpmWaveGrowthInputs::duration,
                  unit::hour, AllowedRange::positive_to(500), "long enough");
  method.output({"height", "Hs", "significant wave height"}, &SpmWaveGrowthResult::height,
                unit::foot);
  method.output({"period", "T", "peak period"}, &SpmWaveGrowthResult::period, unit::second);
  method.output({"needed", "t", "wind duration at which the fetch limits the wave"},
                &SpmWaveGrowthResult::needed, unit::hour);
  method.output({"fetch_that_works", "F", "fetch, shortened where the wind is too short"},
                &SpmWaveGrowthResult::fetch_that_works, unit::mile);
  return method;
}

void explain(const SpmWaveGrowthInputs& in, const SpmWaveGrowthResult& result, bool shortened,
             Steps& steps) {
  steps.given("UA", "adjusted wind speed", measure(in.adjusted_wind));
  steps.given("F", "fetch", measure(in.fetch));
  if (in.depth) steps.given("d", "mean depth", measure(*in.depth));
  steps.computed("t", "wind duration at which the fetch limits the wave",
                 in.depth ? "g·t/UA = 537·(g·T/UA)^(7/3)" : "g·t/UA = 68.8·(g·F/UA²)^(2/3)",
                 measure(result.needed), spm);
  if (shortened) {
    steps.given("t", "the wind lasts only", measure(*in.duration));
    steps.computed("F", "the wind is too short for the fetch: fetch at which it just suffices",
                   "the line above, for F", measure(result.fetch_that_works), spm);
  }
  steps.computed("Hs", "significant wave height",
                 in.depth ? "g·H/UA² = 0.283·A·tanh[0.00565·(g·F/UA²)^½/A], "
                            "A = tanh[0.530·(g·d/UA²)^¾]"
                          : "g·H/UA² = 0.0016·(g·F/UA²)^½, at most 0.2433",
                 measure(result.height), spm);
  steps.computed("T", "peak period",
                 in.depth ? "g·T/UA = 7.54·B·tanh[0.0379·(g·F/UA²)^⅓/B], "
                            "B = tanh[0.833·(g·d/UA²)^⅜]"
                          : "g·T/UA = 0.2857·(g·F/UA²)^⅓, at most 8.134",
                 measure(result.period), spm);
}

}  // namespace

Expected<SpmWaveGrowthResult> spm_wave_growth(const SpmWaveGrowthInputs& inputs, Steps& steps) {
  const double UA = inputs.adjusted_wind.meters_per_second();
  const auto growth_at = [&](double fetch) {
    return inputs.depth ? shallow_growth(fetch, g_si * inputs.depth->meters() / (UA * UA))
                        : deep_growth(fetch);
  };
  double fetch = g_si * inputs.fetch.meters() / (UA * UA);
  Growth growth = growth_at(fetch);
  SpmWaveGrowthResult result;
  result.needed = Duration::seconds(growth.duration * UA / g_si);
  const bool shortened = inputs.duration && *inputs.duration < result.needed;
  if (shortened) {
    std::optional<double> depth;
    if (inputs.depth) depth = g_si * inputs.depth->meters() / (UA * UA);
    fetch = std::min(fetch, fetch_of_duration(g_si * inputs.duration->seconds() / UA, depth));
    growth = growth_at(fetch);
  }
  result.fetch_that_works = Length::meters(fetch * UA * UA / g_si);
  result.height = Length::meters(growth.height * UA * UA / g_si);
  result.period = Duration::seconds(growth.period * UA / g_si);
  explain(inputs, result, shortened, steps);
  return result;
}

const Method& spm_wave_growth_method() {
  static const TypedMethod<SpmWaveGrowthInputs, SpmWaveGrowthResult> method =
      build_spm_wave_growth();
  return method;
}

}  // namespace proofstone
