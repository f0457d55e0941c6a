#pragma once

#include <optional>
#include <vector>

#include "engine/site/typical_section.h"
#include "engine/site/zone_sizing.h"

namespace proofstone {

/// What the section of a place is drawn from.
struct DrawnPlace {
  const Site& site;
  const Zone& zone;
  const std::vector<ZoneWater>& waters;
  const ZoneSizing& sizing;
  const Wording& wording;
};

/// A shore up its slope, as the governing method is given it, from the still water. Limits of the
/// rock that the zone does not state are drawn one wave height from the still water and named so.
/// Nothing where no slope is given, or neither waves nor limits are.
std::optional<TypicalSectionPicture> shore_section(const DrawnPlace& place,
                                                   TypicalSectionPicture picture);

/// An apron along the flow, from the end of its conduit; as long as the zone states, or else as its
/// governing method asks. Nothing where neither gives a length.
std::optional<TypicalSectionPicture> apron_section(const DrawnPlace& place,
                                                   TypicalSectionPicture picture);

/// The same apron from above: as wide at its end as its governing method asks, else as the zone
/// states across the flow. Nothing where neither gives a width.
std::optional<TypicalSectionPicture> apron_plan(const Site& site, const Zone& zone,
                                                const ZoneSizing& sizing, const Wording& wording);

/// A chute or drop along the flow from its crest: at the slope that its method is given, as long as
/// the zone states or the height of the drop asks, with the apron and the crest wall of its method.
/// Nothing where no slope is given.
std::optional<TypicalSectionPicture> chute_section(const DrawnPlace& place,
                                                   TypicalSectionPicture picture);

/// A basin along the flow, as deep and long as its governing method asks. Nothing where that method
/// shapes no pool.
std::optional<TypicalSectionPicture> basin_section(const DrawnPlace& place,
                                                   TypicalSectionPicture picture);

/// Rock round a pier, across the flow, as the method pier-riprap-layout asks. Where the designer
/// gives no pier_width, pier and rock are drawn as they may be, with no reach, and it says so.
std::optional<TypicalSectionPicture> pier_section(const DrawnPlace& place,
                                                  TypicalSectionPicture picture);

/// Rock at an abutment, across the flow: its apron, and the fill of a spill-through abutment or the
/// wall of another. Nothing where no method asks for an apron.
std::optional<TypicalSectionPicture> abutment_section(const DrawnPlace& place,
                                                      TypicalSectionPicture picture);

}  // namespace proofstone
