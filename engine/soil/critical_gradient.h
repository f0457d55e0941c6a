#pragma once

#include "engine/method/method.h"

namespace proofstone {

struct CriticalGradientInputs {
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Dimensionless porosity;
  Dimensionless safety_factor = Dimensionless::number(3);
};

struct CriticalGradientResult {
  Dimensionless critical;
  Dimensionless allowed;
};

/// Upward gradient at which a soil loses its weight: (Gs − 1)(1 − n).
Expected<CriticalGradientResult> critical_gradient(const CriticalGradientInputs& in, Steps& steps);

/// The same by name: "critical-gradient".
const Method& critical_gradient_method();

}  // namespace proofstone
