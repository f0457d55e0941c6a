#pragma once

#include <vector>

#include "engine/site/rock_in_zone.h"

namespace proofstone {

/// What could be done about a lot that does not meet its class or a zone, computed: measure more
/// stones, blend with a material on offer, use it as another class. Nothing when all is well.
std::vector<Finding> remedies_for(const Site& site, const LotEvidence& evidence,
                                  const std::vector<const RockInZone*>& zones,
                                  const Wording& wording);

}  // namespace proofstone
