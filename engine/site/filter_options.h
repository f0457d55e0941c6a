#pragma once

#include <optional>
#include <string>
#include <vector>

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

/// Ids of everything that may be bedding: the materials of the document and the standard beddings.
std::vector<std::string> bedding_ids(const Site& site);

/// Ids of beddings from the soil up, alone and in pairs, that serve between a zone's soil and its
/// rock with every gradation that they allow.
std::vector<std::vector<std::string>> beddings_that_serve(const Site& site, const Zone& zone,
                                                          const LayerCurves& rock,
                                                          const Wording& wording);

}  // namespace proofstone
