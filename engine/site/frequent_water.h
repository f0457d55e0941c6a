#pragma once

#include <optional>
#include <vector>

#include "engine/site/zone_water.h"

namespace proofstone {

/// How high the flows of a site stand on the bank of a zone, from base flow to flood: height above
/// the toe, share of the slope under water, and how often or how long where the flow case says so.
/// It decides where plants, soil and blankets can stand. Nothing unless the site has a base or a
/// frequent flow and the zone is a bank.
std::optional<Finding> frequent_water(const Zone& zone, const SiteSection& section,
                                      const std::vector<ZoneWater>& waters, const Wording& wording);

}  // namespace proofstone
