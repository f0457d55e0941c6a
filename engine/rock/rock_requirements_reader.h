#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "engine/json/field_reader.h"
#include "engine/rock/rock_requirements.h"

namespace proofstone {

/// Reads the catalog's text; schema/rock-requirements.schema.json describes it.
Expected<RequirementCatalog> read_requirement_catalog(std::string_view json_text);

/// Reads `salt`, `cycles` and `above` beside a test, as far as they belong to it.
RockTestManner read_manner(FieldReader& reader, RockTest test);

/// One of rock_test_kinds() by its id.
RockTest read_rock_test(FieldReader& reader);

/// A result or limit of `test`, in SI; problems name the field.
std::optional<double> read_result(FieldReader& reader, const std::string& field, RockTest test);

/// One limit; the caller finishes the reader.
RockLimit read_rock_limit(FieldReader& reader, const Source& source);

}  // namespace proofstone
