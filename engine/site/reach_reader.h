#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/site.h"

namespace proofstone {

/// One of /reaches.
SiteReach read_reach(FieldReader& reader, const std::string& id, Problems& problems);

/// What a reach says of sections and flow cases that are not there, or of sections that another
/// reach has too.
Problems reach_reference_problems(const Site& site);

}  // namespace proofstone
