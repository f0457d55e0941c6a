#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/site.h"

namespace proofstone {

/// A level such as "frequent-flow" or "112.4 ft"; `end_word` ("top", "toe") leaves it open.
NamedLevel read_named_level(FieldReader& reader, const std::string& field,
                            const std::string& end_word);

/// The kinds of rock up the slope of a zone, what the place is like, and the key at its top.
void read_kinds(FieldReader& zone_reader, Zone& zone, Problems& problems);

/// Flow cases that the kinds and the cover of a zone name and the site does not have.
Problems level_reference_problems(const Site& site, const Zone& zone);

}  // namespace proofstone
