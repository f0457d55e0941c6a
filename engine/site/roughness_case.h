#pragma once

#include <optional>
#include <vector>

#include "engine/site/rock_roughness_trial.h"

namespace proofstone {

/// The coarse stones of a class, which make its roughness.
struct CoarseStones {
  double percent = 90;
  Length for_velocity;  ///< no larger than the smallest D90: the smoother rock, the faster water
  Length for_level;     ///< no smaller than it
};

/// Of a class; classes often stop at D85 on their fine side. Nothing where the class says too
/// little of its coarse stones.
std::optional<CoarseStones> coarse_stones(const RockClass& rock_class, const ZoneSetting& setting);

/// The zone in one design flow with the methods that count there: what balances its rock.
RockRoughnessCase roughness_case(const ZoneSizing& sizing, const SiteSection& section,
                                 const ZoneWater& at, const CoarseStones& coarse);

/// The methods that count in one flow case, with what the class has for each.
std::vector<AskingMethod> methods_that_count(const ZoneSizing& sizing, const ZoneWater& at);

}  // namespace proofstone
