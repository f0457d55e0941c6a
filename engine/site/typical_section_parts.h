#pragma once

#include <string>
#include <vector>

#include "engine/site/typical_section.h"
#include "engine/site/zone_sizing.h"

namespace proofstone {

/// What typical sections of all places have in common: the rock of the zone.
TypicalSectionPicture begin_typical_section(const Site& site, const Zone& zone,
                                            const ZoneSizing& sizing, const Wording& wording);

/// The layer in one part from end to end, by its one kind of rock where the zone states one.
void add_whole_part(TypicalSectionPicture& picture, const Zone& zone, const std::string& class_name,
                    const Wording& wording);

/// The parts of the layer by the elevations to which the zone states its kinds of rock.
void add_parts_by_level(TypicalSectionPicture& picture, const Zone& zone,
                        const std::vector<ZoneWater>& waters, const std::string& class_name,
                        const Wording& wording);

/// What lies between soil and rock, from the rock down.
void add_under(TypicalSectionPicture& picture, const Site& site, const Zone& zone,
               const Wording& wording);

void add_levels(TypicalSectionPicture& picture, const std::vector<ZoneWater>& waters,
                const Wording& wording);

/// Toe and key of a zone up a slope. Precondition: surface and slope of the picture are set.
void add_toe_and_key(TypicalSectionPicture& picture, const Zone& zone, const Wording& wording);

/// The size that governs the zone; nullptr where none does.
const SizeAsked* governing_of(const ZoneSizing& sizing);

/// A length that a method gives; absent where it has no such output.
std::optional<Length> output_of(const SizeAsked* asked, const char* key);

/// Cover above `foot` and below `top`, as far as it is drawn; nothing where it is not.
std::optional<TypicalSectionPicture::Cover> drawn_cover(const Zone& zone, Length foot, Length top,
                                                        const std::vector<ZoneWater>& waters,
                                                        const Wording& wording);

/// The water below a structure by its stated depth over `bed`.
void add_tailwaters(TypicalSectionPicture& picture, const std::vector<ZoneWater>& waters,
                    Length bed, const Wording& wording);

/// Puts into words what the picture shows; `seen` ends with where it is seen from: "slope 2H:1V,
/// from the toe up".
void describe(TypicalSectionPicture& picture, const std::string& seen);

}  // namespace proofstone
