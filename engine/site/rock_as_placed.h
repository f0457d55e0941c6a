#pragma once

#include <vector>

#include "engine/site/rock_in_zone.h"

namespace proofstone {

/// One finding for each survey of the zone's layer: whether it lies as thick as the general rule
/// asks of the rock that was measured, not of the class that was ordered. Nothing without a
/// measured curve or a survey.
std::vector<Finding> rock_as_placed(const Site& site, const Zone& zone, const LotEvidence& evidence,
                                    const Wording& wording);

}  // namespace proofstone
