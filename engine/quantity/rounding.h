#pragma once

#include <cmath>

namespace proofstone {

/// More than sums and conversions between units are off by in doubles, and far less than anything
/// that is measured: what misses its limit by less keeps it.
inline constexpr double rounding = 1e-9;

/// The whole number that is no less, but for rounding.
inline double rounded_up(double number) { return std::ceil(number - rounding); }

}  // namespace proofstone
