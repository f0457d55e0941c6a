#pragma once

#include <vector>

#include "engine/method/method.h"

namespace proofstone {

struct WeighedSampleInputs {
  std::vector<Mass> upper_masses;  ///< heaviest stone of each group, from light to heavy
  std::vector<Mass> group_masses;  ///< all stones of each group together
  Mass stone_mass;                 ///< at which the percent lighter is asked
  Dimensionless percent = Dimensionless::number(0.5);
};

struct WeighedSampleResult {
  Dimensionless percent_lighter;  ///< at `stone_mass`, by mass
  Mass mass_at_percent;
};

/// A sample sorted into groups by stone mass, each group weighed (ASTM D5519 method C, scope seen):
/// percent lighter at a stone mass, and stone mass at a percent, straight in log W.
Expected<WeighedSampleResult> weighed_sample(const WeighedSampleInputs& in, Steps& steps);

/// The same by name: "weighed-sample".
const Method& weighed_sample_method();

}  // namespace proofstone
