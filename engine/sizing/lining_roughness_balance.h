#pragma once

#include <optional>

#include "engine/sizing/layer_thickness.h"
#include "engine/sizing/rock_lined_channel.h"

namespace proofstone {

/// The size of rock in a channel that it lines itself: bigger rock is rougher, rougher rock slows
/// and deepens the water, and slower water asks for smaller rock. The size that its own roughness
/// asks for is a fixed point of D30 → n → depth and velocity → D30.
///
/// The size is found with the low roughness (K 0.034: the faster water) and the level with the high
/// one (K 0.038: the deeper water), both reported: USACE EM 1110-2-1601 eqs. 3-2 and 3-3, App. H
/// Problem 2 by trial; WES Streambank Handbook (1997) App. A.
struct LiningRoughnessInputs : RockLinedChannelInputs {
  Dimensionless velocity_coefficient = Dimensionless::number(0.034);
  Dimensionless level_coefficient = Dimensionless::number(0.038);
  Dimensionless d90_over_d30 = Dimensionless::number(1.45);  ///< of the smallest rock allowed
  Placement placement = Placement::dry;  ///< rock placed through water lies rougher
  std::optional<Length> chosen_d90;      ///< of the class chosen, smallest allowed
};

struct LiningRoughnessResult {
  Length d30;  ///< the largest fixed point: every larger size looked at holds
  Length d90;
  Dimensionless fixed_points;
  Dimensionless roughness;  ///< low, at the fixed point
  Length depth;
  Velocity velocity;
  Velocity attacking_velocity;
  Dimensionless level_roughness;  ///< high, with the class chosen or the fixed point
  Length level_depth;
  Velocity level_velocity;
};

/// Problems: as rock_lined_flow and usace_bank_and_bed; "no-size-holds" where even 20 ft of D30
/// asks for more.
Expected<LiningRoughnessResult> lining_roughness_balance(const LiningRoughnessInputs& inputs,
                                                         Steps& steps);

const Method& lining_roughness_balance_method();

}  // namespace proofstone
