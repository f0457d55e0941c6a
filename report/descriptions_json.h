#pragma once

#include <nlohmann/json_fwd.hpp>

#include "engine/method/method.h"
#include "engine/rock/rock_class.h"

namespace proofstone {

/// A method's description as JSON: what lists, forms and the handbook show.
nlohmann::json description_json(const MethodDescription& about);

/// A class with its band and the sizes at which the band is stated, in the unit system asked for.
nlohmann::json rock_class_json(const RockClass& rock_class, UnitSystem units);

}  // namespace proofstone
