#pragma once

#include <algorithm>
#include <cmath>

namespace proofstone {

/// e^x to a part in 10^13 by sums and products alone: libraries differ in the last place, and what
/// is outlined must be the same natively and in a browser. x is held between −60 and 60.
inline double exponential(double x) {
  constexpr double ln_2 = 0.693147180559945309;
  const double held = std::clamp(x, -60.0, 60.0);
  const double doublings = std::floor(held / ln_2 + 0.5);
  const double rest = held - doublings * ln_2;
  double sum = 1;
  for (int term = 13; term > 0; --term) sum = 1 + sum * rest / term;
  return std::ldexp(sum, static_cast<int>(doublings));
}

/// 1/(1 + e^−x).
inline float logistic(float x) { return static_cast<float>(1 / (1 + exponential(-x))); }

}  // namespace proofstone
