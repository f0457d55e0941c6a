#pragma once

#include <vector>

#include "engine/site/zone_sizing.h"

namespace proofstone {

/// For a bank or bed zone with a surveyed section, in each design flow: the size that the methods
/// which count ask for over the rock's own roughness (the size that asks for itself), with a low
/// roughness for the velocity, and the level over the specified class with a high one. Nothing for
/// zones that state their own water or that no method speaks for.
std::vector<Finding> roughness_findings(const Site& site, const ZoneSizing& sizing,
                                        const std::vector<ZoneWater>& water,
                                        const Wording& wording);

}  // namespace proofstone
