#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// The ground under a drop, by how easily seepage carries it away.
enum class CreepSoil {
  very_fine_sand_or_silt,
  fine_sand,
  medium_sand,
  coarse_sand,
  fine_gravel,
  medium_gravel,
  coarse_gravel_and_cobbles,
  boulders_cobbles_and_gravel,
  soft_clay,
  medium_clay,
  hard_clay,
  very_hard_clay,
};

/// Lane's weighted creep: is the way of seepage under a drop long enough for its head?
struct WeightedCreepInputs {
  Length horizontal;  ///< ΣLh: contact flatter than 45°
  Length vertical;    ///< ΣLv: contact steeper than 45°
  Length head;        ///< Hs, difference of water levels across the drop
  CreepSoil soil = CreepSoil::very_fine_sand_or_silt;
};

struct WeightedCreepResult {
  Length weighted_length;     ///< ΣLh/3 + ΣLv
  Dimensionless creep_ratio;  ///< Cw
  Dimensionless least_ratio;  ///< for the soil
  Length needed_length;       ///< least ratio times head
  Length missing_length;      ///< how much weighted length is missing; 0 where none is
};

Expected<WeightedCreepResult> weighted_creep(const WeightedCreepInputs& inputs, Steps& steps);

const Method& weighted_creep_method();

}  // namespace proofstone
