#pragma once

#include <nlohmann/json_fwd.hpp>

#include "engine/finding/problem.h"

namespace proofstone {

/// One problem as JSON: code, sentence, what, file, where, allowed.
nlohmann::json problem_json(const Problem& problem);
nlohmann::json problems_json(const Problems& problems);

/// An answer that says only why there is none: {"problems": […]}.
nlohmann::json why_not(const Problems& problems);

}  // namespace proofstone
