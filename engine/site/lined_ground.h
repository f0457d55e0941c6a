#pragma once

#include <vector>

#include "engine/site/pictures.h"
#include "engine/site/zone_water.h"

namespace proofstone {

/// The ground that a zone's rock covers, across its section from left to right: on a bank from the
/// toe to the top of the zone (to the highest water known where it has none), elsewhere between the
/// bank stations. Empty where no water shows the toe of a bank.
std::vector<GroundPoint> lined_ground(const SiteSection& section, const Zone& zone,
                                      const std::vector<ZoneWater>& water);

}  // namespace proofstone
