#pragma once

#include <nlohmann/json_fwd.hpp>
#include <optional>

#include "engine/json/field_reader.h"
#include "engine/site/site_blend.h"

namespace proofstone {

/// The fields of a request that say what to blend into what.
BlendQuestion read_blend_question(FieldReader& request, Problems& problems);

/// What the materials can do together, as the request interface answers it. Where a width is given,
/// each blend comes with the picture of its curve in the band.
nlohmann::json blend_json(const SiteBlend& blend, UnitSystem units,
                          std::optional<int> width = std::nullopt);

}  // namespace proofstone
