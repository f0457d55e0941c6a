#pragma once

#include <optional>

#include "engine/method/typed_method.h"

namespace proofstone {

/// Where rock of one size or thickness goes over into another along a stream. The larger rock runs
/// on into the reach of the smaller: 10 ft where the smaller lies downstream, 5 ft where it lies
/// upstream, as the Urban Storm Drainage Criteria Manual protects transitions (5 ft above and 10 ft
/// below them, rock for the greatest velocity after a rise of 20 %), and at least three layers of
/// the thicker kind (common practice). The underside goes over at 1V:3H (common practice).
struct RockTransitionInputs {
  Length upstream_d50;
  Length downstream_d50;
  Length upstream_thickness;
  Length downstream_thickness;
  std::optional<Velocity> velocity;  ///< the greatest at the transition
};

struct RockTransitionResult {
  Length overlap;  ///< of the larger rock into the reach of the smaller
  bool larger_upstream = true;
  Length taper;              ///< over which the thickness changes
  Velocity design_velocity;  ///< 1.2 times the greatest; 0 where it is not given
  Dimensionless size_ratio;  ///< larger over smaller D50
};

Expected<RockTransitionResult> rock_transition(const RockTransitionInputs& inputs, Steps& steps);

const Method& rock_transition_method();

}  // namespace proofstone
