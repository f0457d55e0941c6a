#pragma once

#include <cstddef>
#include <vector>

namespace proofstone {

/// A set of linear equations in which each unknown meets only its two neighbours:
/// before[i]·x[i−1] + here[i]·x[i] + after[i]·x[i+1] = right[i].
struct Tridiagonal {
  explicit Tridiagonal(std::size_t count)
      : before(count), here(count), after(count), right(count) {}
  std::vector<double> before;
  std::vector<double> here;
  std::vector<double> after;
  std::vector<double> right;

  /// Elimination without exchange of rows: stable where each `here` outweighs its neighbours
  /// together, which the caller answers for. At least one unknown.
  std::vector<double> solved() const {
    const std::size_t count = here.size();
    std::vector<double> factor(count);
    std::vector<double> x(count);
    double pivot = here[0];
    x[0] = right[0] / pivot;
    for (std::size_t i = 1; i < count; ++i) {
      factor[i] = after[i - 1] / pivot;
      pivot = here[i] - before[i] * factor[i];
      x[i] = (right[i] - before[i] * x[i - 1]) / pivot;
    }
    for (std::size_t i = count - 1; i-- > 0;) x[i] -= factor[i + 1] * x[i + 1];
    return x;
  }
};

}  // namespace proofstone
