#pragma once

#include <optional>
#include <vector>

#include "engine/site/typical_section_of.h"

namespace proofstone {

/// What is to be said of how a zone is lined beside the size of its rock: the kind of rock up its
/// slope, and its cover.
std::vector<Finding> lining_findings(const Site& site, const Zone& zone,
                                     const std::vector<ZoneWater>& waters, const Wording& wording);

}  // namespace proofstone
