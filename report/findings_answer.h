#pragma once

#include <nlohmann/json_fwd.hpp>
#include <optional>

#include "engine/site/findings.h"

namespace proofstone {

/// {"findings": …} and, where a width is asked for, "pictures": [{id, kind, title, description,
/// svg}].
nlohmann::json findings_answer(const Findings& findings, std::optional<int> width);

}  // namespace proofstone
