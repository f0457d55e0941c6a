#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// How easily a cohesive bed erodes.
enum class CohesiveBed { easily_erodible, average, resistant };

/// Velocity that cohesive beds stand, by depth: Neill 1973 [memory], tabulated at 5, 10, 20 and
/// 50 ft; between them by the logarithm of the depth, outside the nearest line.
struct CohesiveVelocityInputs {
  Length depth;
  CohesiveBed bed = CohesiveBed::easily_erodible;
};

struct CohesiveVelocityResult {
  Velocity competent_velocity;
};

Expected<CohesiveVelocityResult> cohesive_competent_velocity(const CohesiveVelocityInputs& inputs,
                                                             Steps& steps);

const Method& cohesive_competent_velocity_method();

}  // namespace proofstone
