#pragma once

#include <string_view>
#include <vector>

#include "engine/rock/rock_class.h"

namespace proofstone {

/// The standard bedding gradations that come with the engine, out of catalog/beddings.json: bands
/// under a name, as rock classes are.
const std::vector<RockClass>& bedding_catalog();

/// The bedding called `id`, or nullptr.
const RockClass* find_bedding(std::string_view id);

}  // namespace proofstone
