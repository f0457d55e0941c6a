#pragma once

#include <nlohmann/json_fwd.hpp>
#include <optional>

#include "engine/site/proposed_mix.h"

namespace proofstone {

/// Proportions for a mix as JSON: {`proportions` {rock_parts, parts} as the document keeps them,
/// findings, pictures}.
nlohmann::json mix_json(const ProposedMix& proposed, UnitSystem units, std::optional<int> width);

}  // namespace proofstone
