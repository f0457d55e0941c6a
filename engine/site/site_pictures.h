#pragma once

#include <vector>

#include "engine/site/lot_evidence.h"
#include "engine/site/rock_in_zone.h"

namespace proofstone {

/// The section of a zone with its water levels and its rock layer.
SectionPicture section_picture(const Site& site, const Zone& zone,
                               const std::vector<ZoneWater>& water, const ZoneSizing& sizing);

/// The measured curve of a lot in the band of its class, with what each method asks for.
GradationPicture gradation_picture(const Site& site, const LotEvidence& evidence,
                                   const std::vector<const RockInZone*>& zones);

/// The stones of the class and those measured, beside one another.
StonesPicture stones_picture(const Site& site, const LotEvidence& evidence);

}  // namespace proofstone
