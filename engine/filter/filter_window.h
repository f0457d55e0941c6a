#pragma once

#include "engine/method/method.h"

namespace proofstone {

struct FilterWindowInputs {
  Length soil_d15;
  Length soil_d50;
  Length soil_d85;
  Length rock_d15;
  Length rock_d50;
};

struct FilterWindowResult {
  Length least_d15;
  Length most_d15;
  Length least_d50;
  Length most_d50;
  Length least_d85;
};

/// Sizes of one granular filter that serves between a soil and a rock, by the highway ratios from
/// both sides. A Problem when no single layer does: more layers are needed.
Expected<FilterWindowResult> filter_window(const FilterWindowInputs& in, Steps& steps);

/// The same by name: "filter-window".
const Method& filter_window_method();

}  // namespace proofstone
