#include "engine/waves/cem_wave_growth.h"

#include <algorithm>
#include <cmath>

namespace proofstone {
namespace {

const char* const cem_of_cem_wave_growth =
    "USACE EM 1110-2-1100 Part II Ch. 2 (2003) (from memory; confirm)";
const char* const cem_full = "USACE EM 1110-2-1100 (2003), eq. II-2-37";
const char* const cem_duration = "USACE EM 1110-2-1100 (2003), eq. II-2-38";

double period_coefficient(PeakPeriodCoefficient coefficient) {
  return coefficient == PeakPeriodCoefficient::k_0_651 ? 0.651 : 0.751;
}

MethodDescription describe_cem_wave_growth() {
  MethodDescription about;
  about.id = "cem-wave-growth";
  about.title = "Wave growth, Coastal Engineering Manual";
  about.purpose =
      "Wave height and peak period from wind speed, straight-line fetch and duration, through the "
      "friction velocity of the wind.";
  about.group = MethodGroup::water;
  about.sources = {
      {"USACE EM 1110-2-1100 Part II Chapter 2 (Change 1, 2003)",
       "growth with fetch, drag, time to become fetch-limited", SourceStanding::memory},
      {"USACE EM 1110-2-1100 Part II Chapter 2 (Change 1, 2003)",
       "eqs. II-2-37 and II-2-38: fully developed sea, equivalent fetch",
       SourceStanding::published}};
  about.cautions = {
      "The coefficient of the peak period is 0.651 in one printing and 0.751 in another, 15 % on "
      "the period; the larger one, which gives more run-up, is taken unless the other is chosen.",
      "It takes the wind speed itself; the adjusted speed UA of the Shore Protection Manual does "
      "not belong here."};
  return about;
}

TypedMethod<CemWaveGrowthInputs, CemWaveGrowthResult> build_cem_wave_growth() {
  TypedMethod<CemWaveGrowthInputs, CemWaveGrowthResult> method(describe_cem_wave_growth(),
                                                               &cem_wave_growth);
  method.required({"wind", "U10", "wind speed over water at 10 m"}, &CemWaveGrowthInputs::wind,
                  unit::meter_per_second, AllowedRange::positive_to(100));
  method.required({"fetch", "X", "straight-line fetch"}, &CemWaveGrowthInputs::fetch,
                  unit::kilometer, AllowedRange::positive_to(2000));
  method.optional({"depth", "d", "depth of the water"}, &CemWaveGrowthInputs::depth, unit::meter,
                  AllowedRange::positive_to(1000), "deep water");
  method.optional({"duration", "t", "how long the wind blows"}, &CemWaveGrowthInputs::duration,
                  unit::hour, AllowedRange::positive_to(500), "long enough");
  method.choice({"period_coefficient", "kT", "coefficient of the peak period"},
                &CemWaveGrowthInputs::period_coefficient,
                {{PeakPeriodCoefficient::k_0_651, "0.651", "as one printing has it"},
                 {PeakPeriodCoefficient::k_0_751, "0.751", "as another printing has it"}});
  method.output({"drag", "CD", "drag coefficient"}, &CemWaveGrowthResult::drag, unit::number);
  method.output({"friction_velocity", "u*", "friction velocity of the wind"},
                &CemWaveGrowthResult::friction_velocity, unit::meter_per_second);
  method.output({"height", "Hm0", "significant wave height"}, &CemWaveGrowthResult::height,
                unit::meter);
  method.output({"period", "Tp", "peak period"}, &CemWaveGrowthResult::period, unit::second);
  method.output({"needed", "t", "wind duration at which the fetch limits the wave"},
                &CemWaveGrowthResult::needed, unit::hour);
  method.output({"fetch_that_works", "X", "fetch, shortened where the wind is too short"},
                &CemWaveGrowthResult::fetch_that_works, unit::kilometer);
  method.output({"full_height", "H∞", "height of the fully developed sea"},
                &CemWaveGrowthResult::full_height, unit::meter);
  method.output({"full_period", "T∞", "period of the fully developed sea"},
                &CemWaveGrowthResult::full_period, unit::second);
  return method;
}

void explain(const CemWaveGrowthInputs& in, const CemWaveGrowthResult& result, bool shortened,
             Steps& steps) {
  steps.given("U10", "wind speed over water at 10 m", measure(in.wind));
  steps.given("X", "straight-line fetch", measure(in.fetch));
  steps.computed("CD", "drag coefficient", "0.001·(1.1 + 0.035·U10) (m/s)", measure(result.drag),
                 cem_of_cem_wave_growth);
  steps.computed("u*", "friction velocity", "U10·√CD", measure(result.friction_velocity),
                 cem_of_cem_wave_growth);
  steps.computed("t", "wind duration at which the fetch limits the wave",
                 "77.23·X^0.67/(U10^0.34·g^0.33) (m, s)", measure(result.needed),
                 cem_of_cem_wave_growth);
  if (shortened) {
    steps.given("t", "the wind lasts only", measure(*in.duration));
    steps.computed("X", "the wind is too short for the fetch: equivalent fetch",
                   "g·X/u*² = 0.00523·(g·t/u*)^1.5", measure(result.fetch_that_works),
                   cem_duration);
  }
  steps.computed("H∞", "height of the fully developed sea", "211.5·u*²/g",
                 measure(result.full_height), cem_full);
  steps.computed("T∞", "period of the fully developed sea", "239.8·u*/g",
                 measure(result.full_period), cem_full);
  steps.computed("Hm0", "significant wave height", "u*²/g·0.0413·(g·X/u*²)^½, at most H∞",
                 measure(result.height), cem_of_cem_wave_growth);
  steps.given("kT", "coefficient of the peak period",
              measure(period_coefficient(in.period_coefficient)), "choice between printings");
  steps.computed("Tp", "peak period",
                 in.depth ? "u*/g·kT·(g·X/u*²)^⅓, at most T∞ and 9.78·√(d/g)"
                          : "u*/g·kT·(g·X/u*²)^⅓, at most T∞",
                 measure(result.period), cem_of_cem_wave_growth);
}

}  // namespace

Expected<CemWaveGrowthResult> cem_wave_growth(const CemWaveGrowthInputs& inputs, Steps& steps) {
  const double U10 = inputs.wind.meters_per_second();
  const double CD = 0.001 * (1.1 + 0.035 * U10);
  const double u = U10 * std::sqrt(CD);
  double X = inputs.fetch.meters();

  CemWaveGrowthResult result;
  result.drag = Dimensionless::number(CD);
  result.friction_velocity = Velocity::meters_per_second(u);
  result.needed =
      Duration::seconds(77.23 * std::pow(X, 0.67) / (std::pow(U10, 0.34) * std::pow(g_si, 0.33)));
  const bool shortened = inputs.duration && *inputs.duration < result.needed;
  if (shortened) {
    X = std::min(X, u * u / g_si * 5.23e-3 * std::pow(g_si * inputs.duration->seconds() / u, 1.5));
  }
  const double fetch = g_si * X / (u * u);
  const double kT = period_coefficient(inputs.period_coefficient);
  const double H_full = 211.5 * u * u / g_si;
  const double T_full = 239.8 * u / g_si;
  double T = std::min(u / g_si * kT * std::pow(fetch, 1.0 / 3), T_full);
  if (inputs.depth) T = std::min(T, 9.78 * std::sqrt(inputs.depth->meters() / g_si));

  result.fetch_that_works = Length::meters(X);
  result.height = Length::meters(std::min(u * u / g_si * 4.13e-2 * std::sqrt(fetch), H_full));
  result.period = Duration::seconds(T);
  result.full_height = Length::meters(H_full);
  result.full_period = Duration::seconds(T_full);
  explain(inputs, result, shortened, steps);
  return result;
}

const Method& cem_wave_growth_method() {
  static const TypedMethod<CemWaveGrowthInputs, CemWaveGrowthResult> method =
      build_cem_wave_growth();
  return method;
}

}  // namespace proofstone
