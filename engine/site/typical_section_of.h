#pragma once

#include <optional>
#include <vector>

#include "engine/site/typical_section.h"
#include "engine/site/zone_sizing.h"

namespace proofstone {

/// The typical section of a bank zone; nothing where its section gives no slope.
std::optional<TypicalSectionPicture> typical_section(const Site& site, const Zone& zone,
                                                     const std::vector<ZoneWater>& waters,
                                                     const ZoneSizing& sizing,
                                                     const Wording& wording);

}  // namespace proofstone
