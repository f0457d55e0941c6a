#pragma once

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Isbash equation for stone in flowing water: USACE Hydraulic Design Criteria sheet 712-1; also
/// NRCS NEH 654 TS14C. Homogeneous; D is the diameter of an equivalent sphere. Depth plays no part.
struct IsbashInputs {
  Velocity velocity;  ///< average of the channel, or at the stone
  /// Velocity at the stone over `velocity`; 1 where `velocity` is already that at the stone.
  Dimensionless velocity_ratio = Dimensionless::number(1);
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Turbulence turbulence = Turbulence::low;
};

struct IsbashResult {
  Dimensionless coefficient;  ///< C: 1.20 in low, 0.86 in high turbulence
  Length d50;
  Length d50_low_turbulence;
  Length d50_high_turbulence;
};

Expected<IsbashResult> isbash(const IsbashInputs& inputs, Steps& steps);
/// The same arithmetic without its steps, for simulation.
Expected<IsbashResult> isbash(const IsbashInputs& inputs);

const SizingMethod& isbash_method();

}  // namespace proofstone
