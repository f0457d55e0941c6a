#pragma once

#include <vector>

#include "engine/site/kind_proposal.h"
#include "engine/site/zone_water.h"

namespace proofstone {

/// The kind of rock that suits each part of a bank or bed, and what the zone states there: one
/// finding a part, or one that proposes where the zone states nothing. Elsewhere what a zone states
/// goes to the designer. `section` is absent for a zone that has none.
std::vector<Finding> kind_findings(const Zone& zone, const SiteSection* section,
                                   const std::vector<ZoneWater>& waters, const Wording& wording);

}  // namespace proofstone
