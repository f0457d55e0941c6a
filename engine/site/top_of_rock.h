#pragma once

#include <optional>
#include <vector>

#include "engine/site/zone_water.h"

namespace proofstone {

/// Whether the top of a bank zone stands high enough above the highest design water by the
/// freeboard rule that the zone names, with the rise of the water in a bend. Nothing where the zone
/// names no rule or no design water could be computed.
std::optional<Finding> top_of_rock(const Zone& zone, const SiteSection& section,
                                   const std::vector<ZoneWater>& waters, const Wording& wording);

}  // namespace proofstone
