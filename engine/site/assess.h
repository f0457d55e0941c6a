#pragma once

#include "engine/site/findings.h"
#include "engine/site/site.h"

namespace proofstone {

/// Everything the engine has to say about a site: water at every zone, rock sizes by every method,
/// class and layer, every look and lot, every lot in every zone it is meant for, and remedies. No
/// input but the site, no clock, no files: the same site gives the same findings everywhere.
Findings assess(const Site& site, UnitSystem units);

/// The cautions every shell shows.
std::vector<std::string> usual_cautions();

}  // namespace proofstone
