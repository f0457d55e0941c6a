#include "engine/waves/wind_over_water.h"

#include <array>
#include <cmath>
#include <utility>

namespace proofstone {
namespace {

const char* const height_rule = "USACE EM 1110-2-1100 (2003), eq. II-2-9";
const char* const time_rule =
    "USACE EM 1110-2-1100 Part II Ch. 2 (2003): above 1 h seen in Example II-2-2, below from "
    "memory, in agreement with Example II-2-1";
const char* const mile_rule = "USACE Shore Protection Manual (1984) (from memory; confirm)";
const char* const saville_rule = "USBR ACER TM-2, after Saville 1962 (from memory; confirm)";
const char* const short_rule = "USACE CEM and SPM (from memory, uncertain; confirm)";

/// Saville's ratio of speed over water to that over land by effective fetch in miles: straight
/// between the printed fetches, level beyond them.
double saville_ratio(double fetch_mi) {
  constexpr std::array<std::pair<double, double>, 6> table{
      {{0.5, 1.08}, {1, 1.13}, {2, 1.21}, {3, 1.26}, {4, 1.28}, {5, 1.30}}};
  if (fetch_mi <= table.front().first) return table.front().second;
  for (std::size_t i = 1; i < table.size(); ++i) {
    const auto& [x1, y1] = table[i];
    if (fetch_mi > x1) continue;
    const auto& [x0, y0] = table[i - 1];
    return y0 + (fetch_mi - x0) / (x1 - x0) * (y1 - y0);
  }
  return table.back().second;
}

Expected<double> exposure_factor(const WindOverWaterInputs& in) {
  switch (in.exposure) {
    case WindExposure::over_water:
      return 1.0;
    case WindExposure::short_fetch:
      return 1.2;
    case WindExposure::saville_fetch:
      break;
  }
  if (!in.fetch) {
    return Problem{"missing-input", "The ratio of speeds over water and land needs the fetch.", "",
                   "/fetch", "a length"};
  }
  return saville_ratio(in.fetch->miles());
}

bool is_averaging_time(Duration time) { return time.seconds() >= 1 && time.seconds() <= 36000; }

Problem bad_time(const char* where) {
  return {"averaging-time-outside", "The averaging time lies outside the curve.", "", where,
          "1 s to 10 h"};
}

MethodDescription describe_wind_over_water() {
  MethodDescription about;
  about.id = "wind-over-water";
  about.title = "Wind over water";
  about.purpose =
      "Wind speed that raises waves, from a reported wind: corrected for height, averaging time "
      "and for a station on land.";
  about.group = MethodGroup::water;
  about.sources = {
      {"USACE EM 1110-2-1100 Part II Chapter 2 (2003)",
       "eq. II-2-9; averaging times, Examples II-2-1 and II-2-2", SourceStanding::published},
      {"USACE Shore Protection Manual (1984)", "fastest mile; adjusted speed UA",
       SourceStanding::memory},
      {"USBR ACER TM-2 (1981), after Saville 1962", "ratio over water to over land",
       SourceStanding::memory}};
  about.cautions = {
      "The adjusted speed UA belongs to the growth formulas of the Shore Protection Manual of 1984 "
      "alone; the Coastal Engineering Manual works in friction velocity. Never mix them.",
      "Corrections for air and water of different temperature and for sheltered stations are left "
      "to the designer."};
  return about;
}

TypedMethod<WindOverWaterInputs, WindOverWaterResult> build_wind_over_water() {
  TypedMethod<WindOverWaterInputs, WindOverWaterResult> method(describe_wind_over_water(),
                                                               &wind_over_water);
  method.required({"speed", "Uz", "wind speed as reported"}, &WindOverWaterInputs::speed,
                  unit::mile_per_hour, AllowedRange::positive_to(250));
  method.defaulted({"height", "z", "height of the anemometer"}, &WindOverWaterInputs::height,
                   unit::meter, AllowedRange::positive_to(100));
  method.optional({"averaged_over", "t", "averaging time of the report"},
                  &WindOverWaterInputs::averaged_over, unit::minute, AllowedRange::positive_to(600),
                  "a fastest-mile speed");
  method.defaulted({"wanted_over", "t", "averaging time that the wave growth needs"},
                   &WindOverWaterInputs::wanted_over, unit::minute, AllowedRange::positive_to(600));
  method.choice(
      {"exposure", "", "where the wind was measured"}, &WindOverWaterInputs::exposure,
      {{WindExposure::over_water, "over-water", "over water, or corrected already"},
       {WindExposure::short_fetch, "land-short-fetch", "on land, fetch below 10 mi: times 1.2"},
       {WindExposure::saville_fetch, "land-by-fetch",
        "on land: ratio by effective fetch, 1.08 to 1.30"}});
  method.optional({"fetch", "Fe", "effective fetch"}, &WindOverWaterInputs::fetch, unit::mile,
                  AllowedRange::positive_to(1000), "only needed for the ratio by fetch");
  method.output({"at_ten_meters", "U10", "speed at 10 m, as averaged in the report"},
                &WindOverWaterResult::at_ten_meters, unit::mile_per_hour);
  method.output({"averaging_time", "t", "averaging time of the report"},
                &WindOverWaterResult::averaging_time, unit::second);
  method.output({"duration_factor", "Ut/Uw", "reported average over the one wanted"},
                &WindOverWaterResult::duration_factor, unit::number);
  method.output({"wanted_speed", "U", "speed averaged over the time wanted"},
                &WindOverWaterResult::wanted_speed, unit::mile_per_hour);
  method.output({"exposure_factor", "RL", "speed over water over speed on land"},
                &WindOverWaterResult::exposure_factor, unit::number);
  method.output({"over_water", "U", "speed over water"}, &WindOverWaterResult::over_water,
                unit::mile_per_hour);
  method.output({"adjusted", "UA", "adjusted speed for the SPM 1984 formulas"},
                &WindOverWaterResult::adjusted, unit::mile_per_hour);
  method.limit({"Anemometer about 8 to 12 m above the ground", height_rule},
               [](const WindOverWaterInputs& in) {
                 return in.height.meters() > 8 - 1e-9 && in.height.meters() < 12 + 1e-9;
               });
  method.limit(
      {"Factor 1.2 for a fetch below 10 mi", short_rule}, [](const WindOverWaterInputs& in) {
        return in.exposure != WindExposure::short_fetch || !in.fetch || in.fetch->miles() < 10;
      });
  return method;
}

}  // namespace

double gust_factor(Duration averaged_over) {
  const double t = averaged_over.seconds();
  if (t < 3600) return 1.277 + 0.296 * std::tanh(0.9 * std::log10(45 / t));
  return 1.5334 - 0.15 * std::log10(t);
}

Expected<WindOverWaterResult> wind_over_water(const WindOverWaterInputs& inputs, Steps& steps) {
  if (!is_averaging_time(inputs.wanted_over)) return bad_time("/wanted_over");
  const Duration averaged = inputs.averaged_over.value_or(
      Duration::seconds(3600 / inputs.speed.miles_per_hour()));  // one mile of wind
  if (!is_averaging_time(averaged)) return bad_time("/averaged_over");
  const auto exposed = exposure_factor(inputs);
  if (!exposed) return exposed.problems();

  WindOverWaterResult result;
  result.at_ten_meters = inputs.speed * std::pow(10 / inputs.height.meters(), 1.0 / 7);
  result.averaging_time = averaged;
  const double factor = gust_factor(averaged) / gust_factor(inputs.wanted_over);
  result.duration_factor = Dimensionless::number(factor);
  result.wanted_speed = result.at_ten_meters / factor;
  result.exposure_factor = Dimensionless::number(*exposed);
  result.over_water = *exposed * result.wanted_speed;
  result.adjusted =
      Velocity::meters_per_second(0.71 * std::pow(result.over_water.meters_per_second(), 1.23));

  steps.given("Uz", "wind speed as reported", measure(inputs.speed));
  steps.computed("U10", "speed at 10 m", "Uz·(10/z)^(1/7), z in m", measure(result.at_ten_meters),
                 height_rule);
  if (inputs.averaged_over) {
    steps.given("t", "averaging time of the report", measure(averaged));
  } else {
    steps.computed("t", "averaging time of a fastest mile", "3600/U (s, mph)", measure(averaged),
                   mile_rule);
  }
  steps.computed("Ut/U3600", "of the report",
                 "1.277 + 0.296·tanh[0.9·log(45/t)] below 1 h, 1.5334 − 0.15·log t above",
                 measure(gust_factor(averaged)), time_rule);
  steps.computed("Ut/U3600", "of the time wanted", "the same",
                 measure(gust_factor(inputs.wanted_over)), time_rule);
  steps.computed("U", "speed averaged over the time wanted", "U10 / ratio of the two",
                 measure(result.wanted_speed));
  steps.given("RL", "speed over water over speed at the station", measure(*exposed),
              inputs.exposure == WindExposure::short_fetch ? short_rule : saville_rule);
  steps.computed("U", "speed over water", "RL·U", measure(result.over_water));
  steps.computed("UA", "adjusted speed, for the SPM 1984 formulas only", "0.71·U^1.23 (m/s)",
                 measure(result.adjusted), mile_rule);
  return result;
}

const Method& wind_over_water_method() {
  static const TypedMethod<WindOverWaterInputs, WindOverWaterResult> method =
      build_wind_over_water();
  return method;
}

}  // namespace proofstone
