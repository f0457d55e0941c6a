#pragma once

#include "engine/json/field_reader.h"
#include "engine/site/site.h"

namespace proofstone {

/// One of /loads.
Load read_load(FieldReader& reader, const std::string& id, Problems& problems);

/// `supply` of a lot.
std::optional<SupplyPlan> read_supply(FieldReader& lot, Problems& problems);

/// One of /layer_surveys.
LayerSurvey read_layer_survey(FieldReader& reader, const std::string& id, Problems& problems);

/// `when` of an observation: empty, or a time in UTC, else a Problem.
std::string read_when(FieldReader& reader);

}  // namespace proofstone
