#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/zone_cover.h"

namespace proofstone {

/// The cover of a zone: topsoil, seed, blanket, stakes, trenches.
std::optional<ZoneCover> read_cover(FieldReader& zone_reader, Problems& problems);

}  // namespace proofstone
