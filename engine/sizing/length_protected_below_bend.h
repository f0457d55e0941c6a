#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// How far below a bend its raised shear reaches, Lp = 0.604·R^(7/6)/n in feet (FHWA HEC-22
/// eq. 5-16; HEC-15 rounds the factor to 0.60). All positive.
Length length_protected_below_bend(Length hydraulic_radius, Dimensionless roughness_in_bend);

/// The same by name, with the factor of either manual.
const Method& length_protected_below_bend_method();

}  // namespace proofstone
