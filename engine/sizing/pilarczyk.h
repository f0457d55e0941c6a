#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// How the protection is built and where the stone lies in it: φ_sc, the stability correction.
enum class ProtectionKind {
  exposed_edge,  ///< edge of loose rock, 1.5
  gabion_edge,   ///< edge of gabions or mattresses, 1.0
  continuous,    ///< continuous, at least two stones thick, 0.75
  interlocked,   ///< interlocked or cabled blocks, 0.5
};

/// The armour: ψ_cr, the critical shear parameter.
enum class ArmourKind {
  rock,    ///< 0.035
  gabion,  ///< box gabion or mattress, 0.070
};

/// How far the velocity profile is developed: k_h.
enum class VelocityProfile {
  developed,      ///< 2/[log₁₀(1 + 12h/ks)]²
  not_developed,  ///< (1 + h/Dn50)^−0.2
};

/// Pilarczyk's stability formula (1995; CIRIA C683, The Rock Manual, 2007, eq. 5.219):
/// Dn50 = (φ_sc/Δ)·(0.035/ψ_cr)·k_h·k_sl⁻¹·k_t²·U²/(2g). Homogeneous; implicit through k_h. In
/// water shallower than five stones k_h is 1.
struct PilarczykInputs {
  Velocity velocity;  ///< depth-averaged
  Length depth;
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  ProtectionKind protection = ProtectionKind::continuous;
  ArmourKind armour = ArmourKind::rock;
  VelocityProfile profile = VelocityProfile::not_developed;
  Dimensionless roughness_stones = Dimensionless::number(2);   ///< ks/Dn50, 1 to 3
  Dimensionless turbulence_factor = Dimensionless::number(1);  ///< k_t²
  Angle bank_angle;                                            ///< α, across the flow; 0 on a bed
  Angle bed_angle;                                             ///< β, down the flow
  Angle angle_of_repose = Angle::degrees(40);
};

struct PilarczykResult {
  Dimensionless depth_factor;  ///< k_h
  Dimensionless slope_factor;  ///< k_sl = k_d·k_l
  Length dn50;                 ///< side of the cube of the median mass
  Length d50;                  ///< median size by sieve, Dn50/0.84
};

/// Problems: a bank or bed as steep as the angle of repose or steeper.
Expected<PilarczykResult> pilarczyk(const PilarczykInputs& inputs, Steps& steps);
/// The same arithmetic without its steps, for simulation.
Expected<PilarczykResult> pilarczyk(const PilarczykInputs& inputs);

const SizingMethod& pilarczyk_method();

}  // namespace proofstone
