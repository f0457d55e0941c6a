#pragma once

#include <nlohmann/json_fwd.hpp>

#include "engine/site/substitution.h"

namespace proofstone {

/// The changes of the document by which a zone is built of the substitute made as safe, as a
/// revision holds them: [{"set": "/zones/…/class", "to": "…"}, {"remove": "/mixes/…/recipe"}, …].
/// Lengths that must not be less are rounded up in the units asked for, openings of a fabric down.
/// Empty where nothing would change.
nlohmann::json as_safe_changes(const Substitution::AsSafe& as_safe, UnitSystem units);

}  // namespace proofstone
