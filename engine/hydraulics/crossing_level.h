#pragma once

#include <cmath>

#include "engine/numeric/narrowed_bracket.h"

namespace proofstone {

/// A water level, in metres, and what a function of the level is there.
struct ValueAtLevel {
  double level = 0;
  double value = 0;
};

/// The level where `value(level)`, below zero at `low` and not at `high`, passes through zero or
/// jumps across it; its value there is not below zero. At most 200 steps; known to 1e-13 of the
/// level.
template <class Value>
double crossing_level(const ValueAtLevel& low, const ValueAtLevel& high, Value&& value) {
  const auto close = [](double a, double b) {
    return std::abs(b - a) <= 1e-13 * (1 + std::abs(a));
  };
  return narrowed_bracket(value, {low.level, low.value}, {high.level, high.value}, close, 200)
      .second;
}

}  // namespace proofstone
