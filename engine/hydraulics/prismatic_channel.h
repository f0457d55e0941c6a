#pragma once

#include "engine/hydraulics/reach.h"

namespace proofstone {

/// A straight channel of trapezoidal section, the same all along.
struct TrapezoidalChannel {
  Length bottom_width;
  Dimensionless side_slope;  ///< horizontal for 1 vertical; 0 for upright walls
  Dimensionless roughness;
};

/// Its section with the bed at elevation `bed` and banks `height` above it.
Expected<ReachSection> trapezoidal_section(const TrapezoidalChannel& channel, Length bed,
                                           Length height);

}  // namespace proofstone
