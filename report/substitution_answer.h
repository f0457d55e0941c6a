#pragma once

#include <nlohmann/json_fwd.hpp>

#include "engine/site/substitution.h"

namespace proofstone {

/// A substitution study as JSON: {columns, rows [{what, cells [{text, margin, outcome}]}],
/// finding}.
nlohmann::json substitution_json(const Substitution& study, UnitSystem units);

}  // namespace proofstone
