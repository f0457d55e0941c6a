#pragma once

#include <vector>

#include "engine/site/zone_water.h"

namespace proofstone {

/// For a zone that speaks of scour: how deep its toe must reach in each design flow, whether the
/// toe as drawn does, and the rock that either kind of toe takes. Nothing for other zones.
std::vector<Finding> toe_findings(const Zone& zone, const std::vector<ZoneWater>& water,
                                  const Wording& wording);

}  // namespace proofstone
