#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/site.h"

namespace proofstone {

/// The fields "scour" and "toe" of a zone.
void read_scour_and_toe(FieldReader& zone_reader, Zone& zone, Problems& problems);

}  // namespace proofstone
