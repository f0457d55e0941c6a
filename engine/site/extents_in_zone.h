#pragma once

#include <optional>
#include <vector>

#include "engine/site/zone_sizing.h"

namespace proofstone {

/// How far the rock of a bank zone reaches along the stream, from its highest design water, and how
/// its ends are made. Absent for other places and where no water is known.
std::optional<Finding> extents_finding(const Zone& zone, const std::vector<ZoneWater>& water,
                                       const Wording& wording);

}  // namespace proofstone
