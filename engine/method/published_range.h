#pragma once

#include <cmath>

namespace proofstone {

/// The span of values a published formula was made for, ends included. A value that misses an end
/// only by the rounding of a unit (0.4 written as 1V:2.5H) still lies inside.
struct PublishedRange {
  double low;
  double high;

  bool holds(double value) const {
    const double slack = 1e-9 * (std::abs(low) + std::abs(high));
    return value >= low - slack && value <= high + slack;
  }
};

}  // namespace proofstone
