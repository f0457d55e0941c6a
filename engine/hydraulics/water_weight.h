#pragma once

#include "engine/quantity/quantity.h"

namespace proofstone {

/// Unit weight of water in the shear of a flow, 62.4 lb/ft³ as the US manuals round it.
inline constexpr UnitWeight water_unit_weight = UnitWeight::pounds_per_cubic_foot(62.4);

}  // namespace proofstone
