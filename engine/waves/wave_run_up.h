#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// A wave that runs up a rough slope of rock: height at the toe, period, angle of the slope.
struct WaveOnSlope {
  Length height;    ///< significant (Hs, Hm0)
  Duration period;  ///< as the formula asks
  Angle slope;      ///< from horizontal
};

/// tanα/√(2πH/(gT²))
double surf_similarity(const WaveOnSlope& wave);

/// Largest run-up on rough riprap by EM 1110-2-1614 (from memory): Rmax = H·1.022·ξ/(1 + 0.247·ξ),
/// ξ with the peak period.
struct RevetmentRunUp {
  Dimensionless surf_similarity;
  Length run_up;
};
Expected<RevetmentRunUp> revetment_run_up(const WaveOnSlope& wave, Steps& steps);
const Method& revetment_run_up_method();

/// Run-up that 2 % of the waves exceed on rock slopes, Coastal Engineering Manual VI-5 (from
/// memory), ξ with the mean period.
struct RockSlopeRunUpInputs {
  Length height;
  Duration period;
  Angle slope;
  enum class Core { impermeable, permeable } core = Core::impermeable;
};
struct RockSlopeRunUp {
  Dimensionless surf_similarity;
  Length run_up;
};
Expected<RockSlopeRunUp> rock_slope_run_up(const RockSlopeRunUpInputs& inputs, Steps& steps);
const Method& rock_slope_run_up_method();

}  // namespace proofstone
