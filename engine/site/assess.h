#pragma once

#include "engine/site/findings.h"
#include "engine/site/site.h"

namespace proofstone {

/// Everything the engine has to say about a site: water at every zone, rock sizes by every method,
/// class and layer, every look and lot, every lot in every zone it is meant for, and remedies. No
/// input but the site, no clock, no files: the same site gives the same findings everywhere.
Findings assess(const Site& site, UnitSystem units);

/// What the looks at one lot say of its rock, as `assess` says it, without the zones it is for:
/// what a screen asks after each stone that is counted. Precondition: the site has the lot.
Findings assess_lot(const Site& site, const std::string& lot, UnitSystem units);

/// The cautions every shell shows.
std::vector<std::string> usual_cautions();

}  // namespace proofstone
