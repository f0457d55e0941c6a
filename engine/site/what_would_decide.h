#pragma once

#include <string>

#include "engine/evidence/band_comparison.h"

namespace proofstone {

/// What to measure next when a comparison is not yet decided: how many stones more, or how many
/// photos more or stones on a grid where the rock was photographed.
std::string what_would_decide(const BandComparison& comparison, const MeasuredGradation& measured);

}  // namespace proofstone
