#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Where the wind was measured, and how its speed over open water is found from that.
enum class WindExposure {
  over_water,     ///< as it stands
  short_fetch,    ///< measured on land, fetch below 10 mi: times 1.2 (CEM, SPM)
  saville_fetch,  ///< measured on land: Saville's ratio by effective fetch (ACER TM-2)
};

struct WindOverWaterInputs {
  Velocity speed;                         ///< as reported
  Length height = Length::meters(10);     ///< of the anemometer
  std::optional<Duration> averaged_over;  ///< absent: a fastest-mile speed
  Duration wanted_over = Duration::hours(1);
  WindExposure exposure = WindExposure::over_water;
  std::optional<Length> fetch;  ///< needed for Saville's ratio
};

struct WindOverWaterResult {
  Velocity at_ten_meters;
  Duration averaging_time;
  Dimensionless duration_factor;  ///< Ut/U3600 of the report over that wanted
  Velocity wanted_speed;          ///< averaged over `wanted_over`
  Dimensionless exposure_factor;
  Velocity over_water;
  Velocity adjusted;  ///< UA = 0.589·U^1.23 (mph): for the SPM 1984 growth formulas only
};

/// Ut/U3600 for an averaging time of 1 s to 10 h (CEM II-2; first branch from memory).
double gust_factor(Duration averaged_over);

/// Reported wind to the speed that wave growth takes: height, averaging time, exposure, in that
/// order. A Problem for an averaging time outside 1 s to 10 h or a missing fetch.
Expected<WindOverWaterResult> wind_over_water(const WindOverWaterInputs& inputs, Steps& steps);

const Method& wind_over_water_method();

}  // namespace proofstone
