#pragma once

#include <vector>

#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// Soil, filter and rock of a zone: every pair of layers, the thickness of each, the verdict of the
/// zone, and what would serve where it does not. Filled rock is its own filter.
std::vector<Finding> filter_findings(const Site& site, const Zone& zone, const Wording& wording);

/// The chain on one gradation picture; absent where neither soil nor filter is stated.
std::optional<FilterPicture> filter_picture(const Site& site, const Zone& zone);

}  // namespace proofstone
