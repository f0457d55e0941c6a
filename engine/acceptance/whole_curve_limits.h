#pragma once

#include <vector>

#include "engine/method/method.h"

namespace proofstone {

struct WholeCurveLimitsInputs {
  std::vector<Dimensionless> counts;  ///< stones in each class of size, picked on a grid
  Dimensionless confidence = Dimensionless::number(0.95);
  Dimensionless asked_class = Dimensionless::number(1);  ///< whose limits are given; 1 the first
};

struct WholeCurveLimitsResult {
  Dimensionless low;  ///< share of the class asked
  Dimensionless high;
  Dimensionless curve_half_width;  ///< of the whole curve at once, in percent smaller
};

/// Limits that hold for all classes of a count together (Goodman 1965), and the half-width of a
/// strip that holds the whole curve (Dvoretzky–Kiefer–Wolfowitz with Massart's constant).
Expected<WholeCurveLimitsResult> whole_curve_limits(const WholeCurveLimitsInputs& in, Steps& steps);

/// The same by name: "whole-curve-limits".
const Method& whole_curve_limits_method();

}  // namespace proofstone
