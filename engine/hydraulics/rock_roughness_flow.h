#pragma once

#include "engine/finding/problem.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Manning's n of a surface of rock: K·D90^⅙ in feet, D90 the smallest its class allows: USACE EM
/// 1110-2-1601 eq. 3-2. K 0.036 on average, 0.034 where velocity and rock size are asked for, 0.038
/// where level and freeboard are (WES Streambank Handbook 1997, App. A). Both positive.
Dimensionless rock_roughness(Length d90, Dimensionless k);

/// A straight channel of trapezoidal section lined with rock, and the water in it.
struct RockLinedChannel {
  Length bottom_width;  ///< may be 0
  Slope side_slope;     ///< vertical over horizontal; positive
  Slope bed_slope;
  Discharge discharge;
};

/// Uniform flow in it.
struct RockLinedFlow {
  Length depth;
  Length top_width;
  Velocity velocity;
};

/// Depth at which the discharge runs uniformly, by Manning's equation. Problem "too-deep": not
/// within 1000 ft.
Expected<RockLinedFlow> rock_lined_flow(const RockLinedChannel& channel, Dimensionless roughness);

}  // namespace proofstone
