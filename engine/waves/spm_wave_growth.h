#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Wave growth of the Shore Protection Manual of 1984, from the adjusted wind speed UA. With a
/// depth the shallow-water form, without one the deep-water form (JONSWAP).
struct SpmWaveGrowthInputs {
  Velocity adjusted_wind;  ///< UA = 0.71·U^1.23 (m/s)
  Length fetch;
  std::optional<Length> depth;       ///< mean over the fetch
  std::optional<Duration> duration;  ///< of the wind; absent: it lasts long enough
};

struct SpmWaveGrowthResult {
  Length height;            ///< significant (Hm0)
  Duration period;          ///< of the spectral peak
  Duration needed;          ///< wind duration at which the fetch limits the wave
  Length fetch_that_works;  ///< the fetch, or the shorter one that a short wind makes of it
};

Expected<SpmWaveGrowthResult> spm_wave_growth(const SpmWaveGrowthInputs& inputs, Steps& steps);

const Method& spm_wave_growth_method();

}  // namespace proofstone
