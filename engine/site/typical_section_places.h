#pragma once

#include <optional>
#include <vector>

#include "engine/site/typical_section.h"
#include "engine/site/zone_sizing.h"

namespace proofstone {

/// A shore up its slope, as the governing method is given it, from the still water. Limits of the
/// rock that the zone does not state are drawn one wave height from the still water and named so.
/// Nothing where no slope is given, or neither waves nor limits are.
std::optional<TypicalSectionPicture> shore_section(const Site& site, const Zone& zone,
                                                   const std::vector<ZoneWater>& waters,
                                                   const ZoneSizing& sizing,
                                                   TypicalSectionPicture picture,
                                                   const Wording& wording);

/// An apron along the flow, from the end of its conduit; as long as the zone states, or else as its
/// governing method asks. Nothing where neither gives a length.
std::optional<TypicalSectionPicture> apron_section(const Site& site, const Zone& zone,
                                                   const std::vector<ZoneWater>& waters,
                                                   const ZoneSizing& sizing,
                                                   TypicalSectionPicture picture,
                                                   const Wording& wording);

}  // namespace proofstone
