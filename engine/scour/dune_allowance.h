#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// How far the troughs of dunes reach below the mean bed: half of van Rijn's dune height (Journal
/// of Hydraulic Engineering 110(12), 1984) [memory],
///   Δ/d = 0.11·(D50/d)^0.3·(1 − e^(−0.5·T))·(25 − T), T = (u*'/u*cr)² − 1,
///   u*' = V·√g/C', C' = 18·log₁₀(12·d/(3·D90)), u*cr by the Shields curve over D*.
/// Metric; water of 20 °C (kinematic viscosity 1·10⁻⁶ m²/s). No dunes while T ≤ 0 (the bed is at
/// rest) nor where T ≥ 25 (they are washed out).
struct DuneInputs {
  Velocity velocity;
  Length depth;  ///< hydraulic radius or, in wide channels, depth
  Length d50;
  Length d90;
  Dimensionless specific_gravity = Dimensionless::number(2.65);
};

struct DuneResult {
  Dimensionless transport_stage;  ///< T
  Length height;
  Length trough;  ///< half the height
};

/// Problems: D90 smaller than D50; grains so large that 3·D90 is not below 12 depths.
Expected<DuneResult> dune_allowance(const DuneInputs& inputs, Steps& steps);

const Method& dune_allowance_method();

}  // namespace proofstone
