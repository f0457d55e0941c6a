#pragma once

#include "engine/sizing/rock_lined_channel.h"

namespace proofstone {

/// One trial of rock in a channel that it lines itself: the water over rock of one size or of one
/// Manning's n, and the size which that water asks for. USACE EM 1110-2-1601 App. H Problem 2; the
/// size that asks for itself is found by lining_roughness_balance.
struct LiningTrialInputs : RockLinedChannelInputs {
  std::optional<Length> d90;               ///< of the class, smallest allowed
  std::optional<Dimensionless> roughness;  ///< n as stated, before that of the D90
  Dimensionless coefficient = Dimensionless::number(0.036);
};

struct LiningTrialResult {
  Dimensionless roughness;
  Length depth;
  Length top_width;
  Velocity velocity;
  Length local_depth;
  Velocity attacking_velocity;
  Length required_d30;
};

/// Problems: "missing-input" with neither a D90 nor an n; those of trial_at.
Expected<LiningTrialResult> lining_roughness_trial(const LiningTrialInputs& inputs, Steps& steps);

const Method& lining_roughness_trial_method();

}  // namespace proofstone
