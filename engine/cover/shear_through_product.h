#pragma once

#include <algorithm>

#include "engine/quantity/quantity.h"

namespace proofstone {

/// What a rolled product lets through to the soil below it, by FHWA HEC-15 3rd ed. (2005) ch. 5
/// (from memory; confirm). `tested` is the shear τl with 12.5 mm of soil loss in its test, `factor`
/// the published α, 6.5 N/m² or 0.14 lb/ft².
struct ShearThroughProduct {
  Stress tested;
  Stress factor;

  /// Permissible shear of product and soil together: (τl/α)·(τp,soil + α/4.3).
  Stress permissible(Stress of_soil) const { return tested / factor * (of_soil + factor / 4.3); }

  /// Shear of the flow that reaches the soil: (τd − τl/4.3)·(α/τl), not below 0.
  Stress effective(Stress applied) const {
    return std::max(Stress::pascals(0), (applied - tested / 4.3) * (factor / tested));
  }
};

}  // namespace proofstone
