#pragma once

#include <vector>

#include "engine/quantity/measure.h"
#include "engine/rock/gradation_band.h"

namespace proofstone {

/// Round sizes in inches or millimetres that a person with a tape or a gauge sorts counted stones
/// by, from small to large: from half the smallest size the band speaks of to a quarter beyond its
/// largest, in even steps, or in growing ones where the band is wide. Common practice, no source:
/// ten bins or so can be told apart. None where the band has no conditions.
std::vector<Length> sorting_sizes(const GradationBand& band, UnitSystem units);

}  // namespace proofstone
