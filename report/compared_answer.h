#pragma once

#include <nlohmann/json_fwd.hpp>

#include "engine/site/submittal_comparison.h"
#include "engine/site/substitution.h"

namespace proofstone {

/// A substitution study as JSON: {columns, rows [{what, cells [{text, margin, outcome, finding}]}],
/// finding}.
nlohmann::json substitution_json(const Substitution& study, UnitSystem units);

/// Submittals beside what is required: {columns, rows, findings}.
nlohmann::json submittals_json(const SubmittalComparison& comparison, UnitSystem units);

}  // namespace proofstone
