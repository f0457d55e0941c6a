#pragma once

#include <vector>

#include "engine/site/rock_in_zone.h"

namespace proofstone {

/// Remedies that need no other rock: taking out the stones above a size, and laying the rock in a
/// thicker layer. Only those that the looks give a reason for. Precondition: the looks go together.
std::vector<Finding> handling_remedies(const Site& site, const LotEvidence& evidence,
                                       const std::vector<const RockInZone*>& zones,
                                       const Wording& wording);

}  // namespace proofstone
