#pragma once

#include <optional>

#include "engine/filter/layer_curves.h"
#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// What would serve between a zone's soil and its rock: the band of a granular filter, the standard
/// beddings and materials on offer, alone and in pairs, and a geotextile. Absent where the zone
/// states no soil.
std::optional<Finding> filter_options(const Site& site, const Zone& zone, const LayerCurves& rock,
                                      const Wording& wording);

}  // namespace proofstone
