#pragma once

#include "engine/method/method.h"
#include "engine/soil/gradation_inputs.h"

namespace proofstone {

struct BurenkovaInputs : GradationInputs {};

struct BurenkovaResult {
  Dimensionless upper_ratio;  ///< h' = d90/d60
  Dimensionless whole_ratio;  ///< h'' = d90/d15
  Dimensionless lowest;       ///< of h' that is stable
  Dimensionless highest;
  Dimensionless margin;  ///< to the nearer of the two; below 1 outside
};

/// d90/d60 must lie between 0.76·log(d90/d15) + 1 and 1.86·log(d90/d15) + 1.
Expected<BurenkovaResult> burenkova(const BurenkovaInputs& in, Steps& steps);

/// The same by name: "burenkova".
const Method& burenkova_method();

}  // namespace proofstone
