#pragma once

#include <nlohmann/json_fwd.hpp>
#include <string_view>

#include "engine/finding/problem.h"

namespace proofstone {

/// Parses JSON as documents need it: nothing after the value, no key twice in one object, at most
/// 64 levels deep, at most 64 MB, valid UTF-8. Problems name the line and column, or the JSON
/// pointer of a repeated key. A byte order mark is skipped.
Expected<nlohmann::json> parse_strict_json(std::string_view text);

/// Empties every list of a document that `parse_strict_json` gave, or of what was made of its
/// parts, in place: the library by itself first moves each element to a list of its own, which
/// takes a fifth of the time that a long count is read in.
void let_go(nlohmann::json& value);

}  // namespace proofstone
