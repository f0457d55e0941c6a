#pragma once

#include <optional>
#include <vector>

#include "engine/site/reach_water.h"

namespace proofstone {

/// What there is to draw of the profiles through a reach; nothing when none could be computed.
std::optional<ProfilePicture> profile_picture(const Site& site, const SiteReach& reach,
                                              const std::vector<ReachWater>& water);

}  // namespace proofstone
