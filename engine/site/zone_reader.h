#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/site.h"

namespace proofstone {

/// One of /zones. What it points at (section, source, class, flow cases) is judged later.
Zone read_zone(FieldReader& reader, const std::string& id, Problems& problems);

}  // namespace proofstone
