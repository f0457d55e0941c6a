#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// How much small stone a graded rock may hold before it fills more than the voids of the rest:
/// USACE EM 1110-2-1601 (1970), gradation criterion 7.
struct LighterStoneLimitInputs {
  Dimensionless voids = Dimensionless::number(0.40);  ///< of the revetment without the small stone
};

struct LighterStoneLimitResult {
  Dimensionless largest_share;  ///< of the bulk volume and, packed alike, of the mass
};

Expected<LighterStoneLimitResult> lighter_stone_limit(const LighterStoneLimitInputs& inputs,
                                                      Steps& steps);

const Method& lighter_stone_limit_method();

}  // namespace proofstone
