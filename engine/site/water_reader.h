#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/site.h"

namespace proofstone {

/// One of /flow_cases.
FlowCase read_flow_case(FieldReader& reader, const std::string& id);

/// One of /sections; absent when its survey could not be read.
std::optional<SiteSection> read_section(FieldReader& reader, const std::string& id,
                                        Problems& problems);

/// One of /centrelines; absent when its course could not be read.
std::optional<SiteCentreline> read_centreline(FieldReader& reader, const std::string& id,
                                              Problems& problems);

}  // namespace proofstone
