#pragma once

#include "engine/quantity/quantity.h"
#include "engine/rock/gradation.h"

namespace proofstone {

/// Mass of a stone whose size is meant as `meaning`:
///  - sphere: (π/6)·ρ·D³ (USACE EM 1110-2-1601 eq. 3-1);
///  - intermediate axis: 0.85·ρ·D³ (FHWA HEC-23; reproduces the FP-14 Table 705-1 masses);
///  - sieve: as the intermediate axis, since a stone passes the opening near its b axis.
/// Size and density positive.
Mass stone_mass(Length size, SizeMeaning meaning, Density rock);

/// Inverse of stone_mass.
Length stone_size(Mass mass, SizeMeaning meaning, Density rock);

/// The same stone's size under another meaning, through its mass.
Length convert_size(Length size, SizeMeaning from, SizeMeaning to);

}  // namespace proofstone
