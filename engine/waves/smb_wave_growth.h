#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Wave growth by Sverdrup, Munk and Bretschneider as the Shore Protection Manual of 1977 gives it,
/// for shallow water, from the wind speed as it stands.
struct SmbWaveGrowthInputs {
  Velocity wind;
  Length fetch;
  Length depth;  ///< mean over the fetch
};

struct SmbWaveGrowthResult {
  Length height;  ///< significant
  Duration period;
};

Expected<SmbWaveGrowthResult> smb_wave_growth(const SmbWaveGrowthInputs& inputs, Steps& steps);

const Method& smb_wave_growth_method();

}  // namespace proofstone
