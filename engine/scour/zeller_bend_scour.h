#pragma once

#include <optional>

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// General and bend scour of sand beds by Zeller, as used in Arizona (Simons, Li and Associates
/// 1985; ADWR) [memory], in feet and feet per second:
///   C = 0.0685·Ymax·V^0.8/(Yh^0.4·Se^0.3), general scour C − Ymax,
///   bend scour C·[2.1·(0.25·T/Rc)^0.2 − 1], 0 where Rc/T ≥ 10, 0.828·C where Rc/T ≤ 0.5.
struct ZellerScourInputs {
  Length greatest_depth;   ///< Ymax
  Length hydraulic_depth;  ///< Yh
  Velocity velocity;
  Slope energy_slope;
  std::optional<Length> bend_radius;  ///< Rc, centreline; absent on a straight reach
  std::optional<Length> top_width;    ///< T
};

struct ZellerScourResult {
  Length general_scour;  ///< not below 0
  Length bend_scour;
  Length scour;  ///< both together
};

/// Problem "missing-input": a bend radius without a top width.
Expected<ZellerScourResult> zeller_bend_scour(const ZellerScourInputs& inputs, Steps& steps);

const Method& zeller_bend_scour_method();

}  // namespace proofstone
