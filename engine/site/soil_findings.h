#pragma once

#include <vector>

#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// What each soil of the document is: its group and name, how fast water passes it, whether it has
/// gaps, disperses, or is internally unstable; or what must be tested first.
std::vector<Finding> soil_findings(const Site& site, const Wording& wording);

}  // namespace proofstone
