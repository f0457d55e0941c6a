#pragma once

#include <optional>
#include "engine/method/typed_method.h"

namespace proofstone {

/// How a rock or gravel lies, for its share of voids.
enum class RockLay {
  smooth_two_layers,
  rough_two_layers,
  rough_many_layers,
  graded_riprap,
  rounded_cobble,
  angular_dumped,
  by_uniformity,
};

/// Share of voids of rock by how it lies; or of sand and gravel by uniformity, after Vukovic and
/// Soro: n = 0.255·(1 + 0.83^Cu).
struct RockVoidsInputs {
  RockLay lay = RockLay::graded_riprap;
  std::optional<Dimensionless> uniformity;  ///< Cu = D60/D10
};

struct RockVoidsResult {
  Dimensionless least;
  Dimensionless voids;  ///< middle of the range
  Dimensionless most;
};

Expected<RockVoidsResult> rock_voids(const RockVoidsInputs& inputs, Steps& steps);

const Method& rock_voids_method();

}  // namespace proofstone
