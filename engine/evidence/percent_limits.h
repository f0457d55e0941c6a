#pragma once

#include "engine/method/method.h"

namespace proofstone {

struct PercentLimitsInputs {
  Dimensionless smaller;  ///< stones smaller than the size in question; may be a fraction
  Dimensionless stones;   ///< in all
  Dimensionless confidence = Dimensionless::number(0.95);
  Dimensionless limit = Dimensionless::number(0.5);  ///< share asked about, one-sided
};

struct PercentLimitsResult {
  Dimensionless low;
  Dimensionless high;
  Dimensionless confidence_at_most;
  Dimensionless confidence_at_least;
};

/// Clopper–Pearson limits of a share, and the one-sided confidence that it is at most or at least a
/// limit.
Expected<PercentLimitsResult> percent_limits(const PercentLimitsInputs& in, Steps& steps);

/// The same by name: "percent-limits".
const Method& percent_limits_method();

}  // namespace proofstone
