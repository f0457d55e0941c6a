#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/method/typed_method.h"

namespace proofstone {

/// One row of Fischenich (2001), Table 2: what a lining bears, from a careful to a bold figure.
struct LiningLimit {
  std::string key;
  std::string name;
  double shear_low;      // lb/ft²
  double shear_high;     // lb/ft²
  double velocity_low;   // ft/s
  double velocity_high;  // ft/s
};
const std::vector<LiningLimit>& lining_limit_rows();

/// Permissible shear and velocity of soils, plants, products and rock: Fischenich (2001),
/// ERDC TN-EMRRP-SR-29, Table 2, US units.
struct LiningLimitsInputs {
  int lining = 0;  ///< row of lining_limit_rows()
  std::optional<Stress> applied_shear;
  std::optional<Velocity> applied_velocity;
};

struct LiningLimitsResult {
  Stress shear_low;
  Stress shear_high;
  Velocity velocity_low;
  Velocity velocity_high;
};

Expected<LiningLimitsResult> lining_limits(const LiningLimitsInputs& inputs, Steps& steps);

const Method& lining_limits_method();

}  // namespace proofstone
