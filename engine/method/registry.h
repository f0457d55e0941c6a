#pragma once

#include <string_view>
#include <vector>

#include "engine/method/method.h"

namespace proofstone {

class SizingMethod;

/// Every method the engine knows, group by group, in the order lists show them.
const std::vector<const Method*>& all_methods();

/// Those that size rock, in the same order.
const std::vector<const SizingMethod*>& sizing_methods();

/// The method called `id`, or nullptr.
const Method* find_method(std::string_view id);

/// The sizing method called `id`, or nullptr.
const SizingMethod* find_sizing_method(std::string_view id);

}  // namespace proofstone
