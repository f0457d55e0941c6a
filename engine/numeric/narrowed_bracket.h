#pragma once

#include <boost/math/tools/toms748_solve.hpp>
#include <cstdint>
#include <utility>

namespace proofstone {

/// A place and what a function is there.
struct ValueAt {
  double place = 0;
  double value = 0;
};

/// The two ends between which a function changes its sign, or jumps across zero, moved together
/// until `close` holds of them or `steps` are used up (Alefeld, Potra and Shi 1995, algorithm 748).
/// The values at the ends given have different signs, or one of them is zero. In plain doubles,
/// which are the same on every machine, and without exceptions.
template <class Value, class Close>
std::pair<double, double> narrowed_bracket(const Value& value, const ValueAt& low,
                                           const ValueAt& high, Close close, std::uintmax_t steps) {
  using boost::math::policies::domain_error;
  using boost::math::policies::evaluation_error;
  using boost::math::policies::ignore_error;
  using Quiet =
      boost::math::policies::policy<boost::math::policies::promote_double<false>,
                                    evaluation_error<ignore_error>, domain_error<ignore_error>>;
  return boost::math::tools::toms748_solve(value, low.place, high.place, low.value, high.value,
                                           close, steps, Quiet());
}

}  // namespace proofstone
