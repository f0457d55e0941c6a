#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/submittal.h"

namespace proofstone {

/// /requirements of the document.
Requirements read_requirements(FieldReader& state, Problems& problems);

/// One of /submittals.
std::optional<Submittal> read_submittal(FieldReader& reader, const std::string& id,
                                        Problems& problems);

}  // namespace proofstone
