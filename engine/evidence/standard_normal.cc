#include "engine/evidence/standard_normal.h"

#include <boost/math/special_functions/erf.hpp>
#include <cmath>
#include <numbers>

namespace proofstone {
namespace {

// Plain doubles inside: long double differs between a desk machine and a browser.
using InDoubles = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

}  // namespace

double normal_cumulative(double z) {
  return boost::math::erfc(-z / std::sqrt(2.0), InDoubles()) / 2;
}

double normal_density(double z) { return std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi); }

}  // namespace proofstone
