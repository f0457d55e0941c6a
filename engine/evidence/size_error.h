#pragma once

#include <optional>

#include "engine/evidence/measured_gradation.h"

namespace proofstone {

/// Standard deviation of ln D at a percent, where the errors of sizes were found by themselves:
/// between the percents that they are known at straight in percent, beyond them unknown. `times` as
/// many stones taken in the same way would reduce the part of it that is not lasting.
std::optional<double> size_error_at(const MeasuredGradation& measured, double percent,
                                    double times = 1);

/// How strongly the evidence shows that the size at a percent is at least (at most) `size`, by the
/// error of that size; absent where it is not known or the curve does not reach.
std::optional<double> confidence_size_at_least(const MeasuredGradation& measured, double percent,
                                               Length size, double times = 1);
std::optional<double> confidence_size_at_most(const MeasuredGradation& measured, double percent,
                                              Length size, double times = 1);

}  // namespace proofstone
