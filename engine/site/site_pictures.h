#pragma once

#include <vector>

#include "engine/site/lot_evidence.h"
#include "engine/site/rock_in_zone.h"

namespace proofstone {

/// The section of a zone with its water levels and its rock layer.
SectionPicture section_picture(const Site& site, const Zone& zone,
                               const std::vector<ZoneWater>& water, const ZoneSizing& sizing);

/// A section that no zone names, as it was surveyed.
SectionPicture section_alone(const SiteSection& section);

/// The channel of a centreline in plan, with its bends and the zones along it, at the width of the
/// largest flow that could be computed at one of them. Nothing where
/// none could.
struct ZoneInPlan {
  const Zone* zone = nullptr;
  const std::vector<ZoneWater>* water = nullptr;
};
std::optional<PlanPicture> plan_picture(const SiteCentreline& centreline,
                                        const std::vector<ZoneInPlan>& zones,
                                        const Wording& wording);

/// The measured curve of a lot in the band of its class, with what each method asks for.
GradationPicture gradation_picture(const Site& site, const LotEvidence& evidence,
                                   const std::vector<const RockInZone*>& zones);

/// The stones of the class and those measured, beside one another.
StonesPicture stones_picture(const Site& site, const LotEvidence& evidence);

}  // namespace proofstone
