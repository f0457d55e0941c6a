#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// The coefficient of the peak period differs between printings of the manual.
enum class PeakPeriodCoefficient {
  k_0_651,
  k_0_751,
};

/// Wave growth of the Coastal Engineering Manual, Part II Chapter 2, in friction velocity.
struct CemWaveGrowthInputs {
  Velocity wind;                     ///< U10, as it stands
  Length fetch;                      ///< straight line
  std::optional<Length> depth;       ///< bounds the period
  std::optional<Duration> duration;  ///< of the wind; absent: it lasts long enough
  PeakPeriodCoefficient period_coefficient = PeakPeriodCoefficient::k_0_751;
};

struct CemWaveGrowthResult {
  Dimensionless drag;          ///< CD
  Velocity friction_velocity;  ///< u*
  Length height;               ///< Hm0
  Duration period;             ///< Tp
  Duration needed;             ///< wind duration at which the fetch limits the wave
  Length fetch_that_works;
  Length full_height;    ///< of the fully developed sea
  Duration full_period;  ///< of the fully developed sea
};

Expected<CemWaveGrowthResult> cem_wave_growth(const CemWaveGrowthInputs& inputs, Steps& steps);

const Method& cem_wave_growth_method();

}  // namespace proofstone
