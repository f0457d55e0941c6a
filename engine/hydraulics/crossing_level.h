#pragma once

#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>

namespace proofstone {

/// A water level, in metres, and what a function of the level is there.
struct ValueAtLevel {
  double level = 0;
  double value = 0;
};

namespace crossing_level_detail {
// Plain doubles, and no exceptions: the bracket is known to hold a change of sign.
using Quiet = boost::math::policies::policy<
    boost::math::policies::promote_double<false>,
    boost::math::policies::evaluation_error<boost::math::policies::ignore_error>,
    boost::math::policies::domain_error<boost::math::policies::ignore_error>>;
}  // namespace crossing_level_detail

/// The level where `value(level)`, below zero at `low` and not at `high`, passes through zero or
/// jumps across it; its value there is not below zero. Bracketed (Alefeld, Potra and Shi 1995,
/// algorithm 748); at most 200 steps; known to 1e-13 of the level.
template <class Value>
double crossing_level(const ValueAtLevel& low, const ValueAtLevel& high, Value&& value) {
  std::uintmax_t steps = 200;
  const auto close = [](double a, double b) {
    return std::abs(b - a) <= 1e-13 * (1 + std::abs(a));
  };
  const auto bracket =
      boost::math::tools::toms748_solve(value, low.level, high.level, low.value, high.value, close,
                                        steps, crossing_level_detail::Quiet());
  return bracket.second;
}

}  // namespace proofstone
