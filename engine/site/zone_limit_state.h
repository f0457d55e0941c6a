#pragma once

#include <optional>
#include <vector>

#include "engine/reliability/score_space.h"
#include "engine/reliability/size_limit_state.h"
#include "engine/site/zone_water.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Everything that the chance by one method in one flow case rests on.
struct ChanceQuestion {
  const Zone* zone = nullptr;
  const RockClass* specified = nullptr;
  const ZoneWater* water = nullptr;
  const SizingMethod* method = nullptr;
  const StatedUncertainty* stated = nullptr;
};

/// The limit state of a zone's rock with its variables in the order: inputs, model factor,
/// available size. Sizes are as the class measures stones.
struct ZoneLimitState {
  std::optional<SizeLimitState> limit;
  std::vector<Correlation> correlations;
  Length available;  ///< mean size of the rock that is there
  double percent_smaller = 50;
};

/// Problems: why the method cannot speak, a class that states no such size, and what is wrong with
/// what is stated.
Expected<ZoneLimitState> zone_limit_state(const ChanceQuestion& ask);

}  // namespace proofstone
