#pragma once

#include <cmath>

#include "engine/quantity/quantity.h"

namespace proofstone {

/// How far a slope goes for each unit that it rises, as formulas of waves have it.
inline double cot(Angle slope) { return 1 / std::tan(slope.radians()); }

}  // namespace proofstone
