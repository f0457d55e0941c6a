#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/ordering.h"

namespace proofstone {

/// `extent` of a zone; empty where it has none.
ZoneExtent read_extent(FieldReader& zone, Problems& problems);

/// /ordering of the document.
Ordering read_ordering(FieldReader& state, Problems& problems);

/// /prices of the document; absent where it states none.
std::optional<Prices> read_prices(FieldReader& state, Problems& problems);

}  // namespace proofstone
