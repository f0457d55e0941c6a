#pragma once

#include <optional>
#include <vector>

#include "engine/site/typical_section.h"
#include "engine/site/zone_sizing.h"

namespace proofstone {

/// The typical section of a zone, seen where the trade draws it: a bank up its surveyed slope, a
/// bed across the stream, a shore up the slope that its governing method is given, an apron, chute,
/// drop or basin along the flow, rock at a pier or abutment across it. Nothing where the document
/// does not give the lines.
std::optional<TypicalSectionPicture> typical_section(const Site& site, const Zone& zone,
                                                     const std::vector<ZoneWater>& waters,
                                                     const ZoneSizing& sizing,
                                                     const Wording& wording);

/// The apron below a conduit from above; nothing of other places.
std::optional<TypicalSectionPicture> plan_view(const Site& site, const Zone& zone,
                                               const ZoneSizing& sizing, const Wording& wording);

/// The key at both ends of a bank zone, seen along the bank and square to its slope; nothing where
/// no key can be worked out.
std::optional<TypicalSectionPicture> end_key_section(const Site& site, const Zone& zone,
                                                     const std::vector<ZoneWater>& waters,
                                                     const ZoneSizing& sizing,
                                                     const Wording& wording);

}  // namespace proofstone
