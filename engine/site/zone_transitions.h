#pragma once

#include <vector>

#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"
#include "engine/site/zone_extents.h"

namespace proofstone {

/// Where bank zones on the same side of the same centreline meet or overlap and change their class
/// or thickness, from upstream down.
std::vector<ZoneTransition> transitions_along(const Site& site);

/// What each of them asks of the two zones.
std::vector<Finding> transition_findings(const Site& site, const Wording& wording);

}  // namespace proofstone
