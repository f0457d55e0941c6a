#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/site.h"

namespace proofstone {

/// One of /placing_walks.
PlacingWalk read_placing_walk(FieldReader& reader, const std::string& id, Problems& problems);

/// One of /nonconformances.
Nonconformance read_nonconformance(FieldReader& reader, const std::string& id, Problems& problems);

/// /placing_tolerances.
PlacingTolerances read_placing_tolerances(FieldReader& state, Problems& problems);

/// Zones, lots, checks and materials that walks and nonconformances name and the design does not
/// have; lengths that a check cannot have.
Problems placing_reference_problems(const Site& site);

}  // namespace proofstone
