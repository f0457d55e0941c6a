#pragma once

#include <vector>

#include "engine/quantity/measure.h"
#include "engine/rock/gradation_band.h"

namespace proofstone {

/// Round sizes that a person with a tape or a gauge sorts counted stones by, from small to large,
/// in whole steps of an inch or millimetre measure: from half the smallest size the band speaks of
/// to a quarter beyond its largest. Common practice, no source: ten bins or so can be told apart.
std::vector<Length> sorting_sizes(const GradationBand& band, UnitSystem units);

}  // namespace proofstone
