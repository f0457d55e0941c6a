#pragma once

#include <optional>

#include "engine/quantity/quantity.h"
#include "engine/rock/rock_properties.h"

namespace proofstone {

/// Side-slope factor K1 of USACE EM 1110-2-1601 Plate B-39, by the fit in FHWA HEC-23 (2009) DG4:
/// √(1 − [sin(θ−14°)/sin 32°]^1.6), 1 where θ ≤ 14°. Nothing where the bank is too steep for it
/// (46°).
std::optional<double> side_slope_factor_curve(Angle bank);

/// Share of its bed stability that a stone keeps on a side slope: √(1 − sin²θ/sin²φ), which is
/// EM 1110-2-1601 eq. 3-4, K1 of FHWA HEC-11 and K of Lane (1955). Nothing where the bank is as
/// steep as the angle of repose or steeper: loose rock does not stay on it.
std::optional<double> side_slope_factor_analytic(Angle bank, Angle angle_of_repose);

/// The rock's own angle of repose or, where it was not found, 40° for angular and 37° for rounded
/// rock: Chow (1959), stones of 100 to 500 mm, as quoted by Witheridge (2009).
Angle angle_of_repose_of(const RockProperties& rock);

}  // namespace proofstone
