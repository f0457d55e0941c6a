#pragma once

namespace proofstone {

/// Chance that a standard normal variable is below z; accurate in both tails.
double normal_cumulative(double z);

/// Density of the standard normal distribution.
double normal_density(double z);

}  // namespace proofstone
