#include "engine/reliability/distribution.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

#include "engine/evidence/standard_normal.h"

namespace proofstone {
namespace {

std::vector<Distribution> one_of_each() {
  return {*Distribution::normal(10, 2), *Distribution::lognormal(10, 2),
          *Distribution::truncated_normal(10, 2, 7, 15), *Distribution::triangular(4, 9, 20),
          *Distribution::uniform(5, 9)};
}

TEST(StandardNormal, TabulatedValues) {
  EXPECT_NEAR(normal_cumulative(0), 0.5, 1e-15);
  EXPECT_NEAR(normal_cumulative(1.959963984540054), 0.975, 1e-14);
  EXPECT_NEAR(normal_cumulative(-6) / 9.865876450376946e-10, 1, 1e-12);
  EXPECT_NEAR(normal_density(0), 0.3989422804014327, 1e-15);
}

TEST(Distributions, ScoreAndValueTurnIntoEachOther) {
  for (const auto& distribution : one_of_each()) {
    for (const double score : {-5.0, -2.0, -0.3, 0.0, 0.7, 3.0, 5.0}) {
      const double value = distribution.at_score(score);
      EXPECT_NEAR(distribution.score_of(value), score, 1e-6)
          << static_cast<int>(distribution.family());
      EXPECT_NEAR(distribution.cumulative(value), normal_cumulative(score), 1e-9);
    }
  }
}

TEST(Distributions, ProbabilityAndValueTurnIntoEachOther) {
  for (const auto& distribution : one_of_each()) {
    for (const double probability : {0.001, 0.25, 0.5, 0.9, 0.9999}) {
      EXPECT_NEAR(distribution.cumulative(distribution.at_probability(probability)), probability,
                  1e-12);
    }
  }
}

// The mean and the deviation are integrals over the probability; the midpoint rule shows them.
TEST(Distributions, MeanAndDeviationAreThoseOfTheValues) {
  for (const auto& distribution : one_of_each()) {
    constexpr int cells = 200'000;
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < cells; ++i) {
      const double value = distribution.at_probability((i + 0.5) / cells);
      sum += value;
      squares += value * value;
    }
    const double mean = sum / cells;
    EXPECT_NEAR(distribution.mean(), mean, 1e-4);
    EXPECT_NEAR(distribution.standard_deviation(), std::sqrt(squares / cells - mean * mean), 2e-3);
  }
}

TEST(Distributions, LognormalKeepsTheMeanAndDeviationGiven) {
  const auto distribution = *Distribution::lognormal(7.1, 0.71);
  EXPECT_NEAR(distribution.mean(), 7.1, 1e-12);
  EXPECT_NEAR(distribution.coefficient_of_variation(), 0.1, 1e-12);
}

TEST(Distributions, WhatIsNoDistributionIsAProblem) {
  EXPECT_FALSE(Distribution::normal(1, 0));
  EXPECT_FALSE(Distribution::normal(std::nan(""), 1));
  EXPECT_FALSE(Distribution::lognormal(-1, 1));
  EXPECT_FALSE(Distribution::truncated_normal(0, 1, 20, 21));
  EXPECT_FALSE(Distribution::truncated_normal(0, 1, 1, -1));
  EXPECT_FALSE(Distribution::triangular(1, 0, 2));
  EXPECT_FALSE(Distribution::uniform(2, 2));
  EXPECT_EQ(Distribution::uniform(2, 2).problems().front().code, "not-a-distribution");
}

}  // namespace
}  // namespace proofstone
