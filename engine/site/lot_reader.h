#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/site.h"

namespace proofstone {

/// One of /lots.
Lot read_lot(FieldReader& reader, const std::string& id, Problems& problems);

/// One of /looks.
Look read_look(FieldReader& reader, const std::string& id, Problems& problems);

/// Looks that stand twice: the same kind at the same lot by the same person at the same time.
Problems repeated_looks(const Site& site);

}  // namespace proofstone
