#pragma once

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Rock below an outlet from velocity alone: the forms of Berry and Searcy that FHWA HEC-14 3rd ed.
/// (2006) App. D compares.
struct OutletVelocityInputs {
  Velocity velocity;  ///< at the outlet
  Dimensionless specific_gravity = Dimensionless::number(2.65);
};

struct OutletVelocityResult {
  Length d50_berry;   ///< 0.0126·V² (ft, ft/s)
  Length d50_searcy;  ///< 0.692/(S−1)·V²/2g
  Length d50;         ///< the larger
};

Expected<OutletVelocityResult> outlet_velocity(const OutletVelocityInputs& inputs, Steps& steps);

const SizingMethod& outlet_velocity_method();

}  // namespace proofstone
