#pragma once

#include <nlohmann/json_fwd.hpp>

namespace proofstone {

/// Asks the engine as every shell does; see report/request.h.
nlohmann::json ask(const nlohmann::json& request);

}  // namespace proofstone
