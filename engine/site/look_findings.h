#pragma once

#include <vector>

#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// What looks at a lot say beside shares of sizes: quick looks (a suspicion or none, never a
/// verdict), counts of shape, checks of outlines, and stones that do not fit into the layers they
/// are for.
std::vector<Finding> look_findings(const Site& site, const Lot& lot, const Wording& wording);

/// A quick look against the class that was ordered and its neighbours.
Finding quick_look_finding(const RockClass& ordered, const Look& look, const QuickLook& seen,
                           const Wording& wording);

/// Shares of long and flat stones by number, with their limits.
Finding shape_count_finding(const Site& site, const Look& look, const ShapeCount& count,
                            const Wording& wording);

/// What somebody found who looked at outlines node by node, against the limits of the photos
/// themselves. Precondition: photos.check is not empty.
Finding outline_check_finding(const Site& site, const Look& look, const PhotoSet& photos);

/// Dates that a right clock does not give: observations after the revision that records them.
std::vector<Finding> clock_findings(const Site& site);

}  // namespace proofstone
