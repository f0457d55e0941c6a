#pragma once

#include "engine/method/method.h"

namespace proofstone {

struct ExitGradientInputs {
  Length head;
  Length cutoff_depth;
  Length floor_width = Length::meters(0);
  std::optional<Dimensionless> critical_gradient;
};

struct ExitGradientResult {
  Dimensionless gradient;
  Dimensionless safety_factor;  ///< 0 where no critical gradient is given
};

/// Khosla's exit gradient behind a floor with a cutoff at its downstream end; without a floor, a
/// single sheet pile.
Expected<ExitGradientResult> exit_gradient(const ExitGradientInputs& in, Steps& steps);

/// The same by name: "exit-gradient".
const Method& exit_gradient_method();

}  // namespace proofstone
