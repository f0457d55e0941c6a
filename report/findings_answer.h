#pragma once

#include <optional>
#include <string>

#include "engine/site/findings.h"

namespace proofstone {

/// {"findings": …} and, where a width is asked for, "pictures": [{id, kind, title, description,
/// svg}], as JSON text.
std::string findings_answer(const Findings& findings, std::optional<int> width);

}  // namespace proofstone
