#pragma once

#include <optional>
#include <vector>

#include "engine/site/zone_extents.h"
#include "engine/site/zone_sizing.h"

namespace proofstone {

/// What `extents_finding` says, as figures to draw; absent for other places and where no water is
/// known.
std::optional<ZoneExtents> extents_of_zone(const Zone& zone, const std::vector<ZoneWater>& water);

/// How far the rock of a bank zone reaches along the stream, from its highest design water, how its
/// ends are made, and the keys that hold it. Absent for other places and where no water is known.
std::optional<Finding> extents_finding(const Zone& zone, const std::vector<ZoneWater>& water,
                                       const Wording& wording);

}  // namespace proofstone
