#pragma once

#include "engine/quantity/quantity.h"

namespace proofstone {

/// Unit weight of water in the shear of a flow, 62.4 lb/ft³ as the US manuals round it.
inline constexpr UnitWeight water_unit_weight = UnitWeight::pounds_per_cubic_foot(62.4);
inline constexpr double gamma_w = water_unit_weight.pounds_per_cubic_foot();  // lb/ft³
/// The same as a density.
inline constexpr Density water_density = Density::pounds_mass_per_cubic_foot(62.4);

}  // namespace proofstone
