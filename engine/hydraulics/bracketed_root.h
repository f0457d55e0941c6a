#pragma once

namespace proofstone {

/// The place where `rises(x)` turns from false to true between `low` (false) and `high` (true), by
/// halving: at most 200 steps, and it ends earlier when the halves can no longer be told apart.
/// Only the answer to the question is used, never its size, so that a last-digit difference between
/// two machines moves the result by no more than the last digit. Returns the upper end: the
/// question is answered "true" there.
template <class Rises>
double turning_point(double low, double high, Rises&& rises) {
  constexpr int most_halvings = 200;
  for (int i = 0; i < most_halvings; ++i) {
    const double middle = low + (high - low) / 2;
    if (!(middle > low && middle < high)) break;
    if (rises(middle)) {
      high = middle;
    } else {
      low = middle;
    }
  }
  return high;
}

}  // namespace proofstone
