#pragma once

#include <vector>

#include "engine/site/zone_sizing.h"

namespace proofstone {

/// How the toe of a shore zone is made under the waves of each design flow case that states them,
/// and whether the toe as drawn does. Empty for other places, and where the zone states scour: its
/// toe is then judged by that.
std::vector<Finding> shore_toe_findings(const Zone& zone, const ZoneSizing& sizing,
                                        const std::vector<ZoneWater>& water,
                                        const Wording& wording);

}  // namespace proofstone
