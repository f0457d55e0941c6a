#include "engine/quantity/quantity.h"

#include <cmath>

namespace proofstone {

Angle angle_of(Slope slope) { return Angle::radians(std::atan(slope.ratio())); }

Slope slope_of(Angle angle) { return Slope::ratio(std::tan(angle.radians())); }

}  // namespace proofstone
