#include "engine/reliability/direction_numbers.h"

#include <gtest/gtest.h>

#include <boost/random/sobol.hpp>

namespace proofstone {
namespace {

TEST(DirectionNumbers, MakeThePointsOfTheWholeTable) {
  for (const std::size_t dimension : {1U, 2U, 17U, 64U}) {
    boost::random::sobol_engine<std::uint64_t, 64, DirectionNumbers> ours(dimension);
    boost::random::sobol theirs(dimension);
    for (std::size_t i = 0; i < 1000 * dimension; ++i) ASSERT_EQ(ours(), theirs()) << i;
  }
}

}  // namespace
}  // namespace proofstone
