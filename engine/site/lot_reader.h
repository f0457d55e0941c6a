#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/site.h"

namespace proofstone {

/// One of /lots.
Lot read_lot(FieldReader& reader, const std::string& id, Problems& problems);

/// One of /looks.
Look read_look(FieldReader& reader, const std::string& id, Problems& problems);

}  // namespace proofstone
