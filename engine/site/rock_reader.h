#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/site.h"

namespace proofstone {

/// One of /sources.
RockSource read_source(FieldReader& reader, const std::string& id);

/// One of /materials; absent when its gradation could not be read.
std::optional<Material> read_material(FieldReader& reader, const std::string& id,
                                      Problems& problems);

}  // namespace proofstone
