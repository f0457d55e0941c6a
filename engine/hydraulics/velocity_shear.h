#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Shear of a depth-averaged velocity by Manning's equation with the depth for the hydraulic
/// radius, τ = γ·n²·V²/(k²·h^⅓), k = 1 in SI; γ = 62.4 lb/ft³. All positive.
Stress velocity_shear(Velocity velocity, Dimensionless roughness, Length depth);

/// The same by name, with the unit weight of the water as an input.
const Method& velocity_shear_method();

}  // namespace proofstone
