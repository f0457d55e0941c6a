#pragma once

#include <vector>

#include "engine/site/rock_in_zone.h"

namespace proofstone {

/// What could be done about a lot that does not meet its class or a zone, computed and ranked:
/// measure more stones, use it only where it holds, scalp it, blend it with a material on offer,
/// thicken the layer, use it as another class, send it back. Nothing when all is well.
std::vector<Finding> remedies_for(const Site& site, const LotEvidence& evidence,
                                  const std::vector<const RockInZone*>& zones,
                                  const Wording& wording);

}  // namespace proofstone
