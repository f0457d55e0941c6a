#pragma once

#include <algorithm>
#include <cmath>
#include <optional>

#include "engine/evidence/measured_gradation.h"
#include "engine/finding/problem.h"

namespace proofstone {

/// Beyond this nobody counts. Internal to the evidence, as all below.
inline constexpr int most_stones_worth_counting = 5000;

/// The Problem of a confidence that no statement can be made at.
inline std::optional<Problem> problem_of_confidence(double confidence) {
  if (confidence >= 0.5 && confidence < 1) return std::nullopt;
  return Problem{"confidence-out-of-range", "The confidence is not from 50 % to below 100 %.", "",
                 "confidence", "from 0.5 to below 1, such as 0.95"};
}

/// The least of the numbers above `now`, up to 5,000, with which `decided_with` holds. Relies on a
/// larger number never undoing a decision.
template <class Decided>
std::optional<int> least_number(int now, Decided decided_with) {
  if (now >= most_stones_worth_counting || !decided_with(most_stones_worth_counting)) {
    return std::nullopt;
  }
  int undecided = now;
  int enough = most_stones_worth_counting;
  while (enough - undecided > 1) {
    const int middle = undecided + (enough - undecided) / 2;
    (decided_with(middle) ? enough : undecided) = middle;
  }
  return enough;
}

/// The least number of stones handled in all, up to 5,000, with which `decided(effective)` holds
/// for the share at `size` when the shares stay as they are and more stones are taken in the same
/// way. Relies on more stones never undoing a decision.
template <class Decided>
std::optional<int> stones_needed(const MeasuredGradation& measured, Length size, Decided decided) {
  const int now = measured.stones > 0 ? measured.stones
                                      : static_cast<int>(std::ceil(measured.effective_stones));
  if (now < 1 || !(measured.effective_stones_at(size) > 0)) return std::nullopt;
  return least_number(now, [&](int stones) {
    return decided(measured.effective_stones_at(size, static_cast<double>(stones) / now));
  });
}

}  // namespace proofstone
