#pragma once

#include <vector>

#include "engine/site/covered_slope.h"

namespace proofstone {

/// What is to be said of the cover of a zone: where it begins, whether it survives the frequent
/// flows new and grown, blanket, stakes, trenches and quantities. Nothing for a zone without cover.
/// `section` is absent for a zone that has none.
std::vector<Finding> cover_findings(const Zone& zone, const SiteSection* section,
                                    const std::vector<ZoneWater>& waters, const Wording& wording);

/// The same of a shore: whether it begins above the reach of the waves, blanket, stakes, trenches
/// and quantities. Precondition: the zone has a cover.
std::vector<Finding> shore_cover_findings(const Zone& zone, const std::vector<ZoneWater>& waters,
                                          const Wording& wording);

/// Whether the cover begins where the stream lets it: above the water that always runs, or across
/// the bottom of a dry swale.
Finding cover_bottom_finding(const Zone& zone, const CoveredSlope& slope,
                             const std::vector<ZoneWater>& waters, const Wording& wording);

/// Whether the grown cover, and what protects it until then, survive one frequent flow.
std::vector<Finding> cover_water_findings(const Zone& zone, const SiteSection& section,
                                          const CoveredSlope& slope, const ShearAtEdge& edge,
                                          const Wording& wording);

/// Whether the type of blanket suits the slope and lasts until plants hold.
Finding blanket_finding(const Zone& zone, const CoveredSlope& slope,
                        const std::vector<ShearAtEdge>& edges, const Wording& wording);

/// How the blanket is held: stakes, trenches, and what the cover takes.
std::vector<Finding> cover_making_findings(const Zone& zone, const CoveredSlope& slope,
                                           const std::vector<ShearAtEdge>& edges,
                                           const Wording& wording);

}  // namespace proofstone
