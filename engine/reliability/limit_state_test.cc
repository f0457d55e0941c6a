// First-order, design point and sampling on limit states whose answers are known.
#include "engine/reliability/limit_state.h"

#include <gtest/gtest.h>

#include <cmath>

#include "engine/evidence/standard_normal.h"
#include "engine/reliability/design_point.h"
#include "engine/reliability/first_order.h"
#include "engine/reliability/sampling.h"
#include "engine/reliability/variance_shares.h"

namespace proofstone {
namespace {

using Values = std::span<const double>;

/// Strength minus load, both normal: β = (6 − 4)/√(1² + 0.5²).
FormulaLimitState normal_margin() {
  return {{{"strength", "strength", *Distribution::normal(6, 1)},
           {"load", "load", *Distribution::normal(4, 0.5)}},
          [](Values x) -> std::optional<double> { return x[0] - x[1]; }};
}

FormulaLimitState lognormal_margin(double ratio, double strength_spread, double load_spread) {
  return {{{"strength", "strength", *Distribution::lognormal(ratio, ratio * strength_spread)},
           {"load", "load", *Distribution::lognormal(1, load_spread)}},
          [](Values x) -> std::optional<double> { return x[0] - x[1]; }};
}

TEST(FirstOrder, NormalMarginIsExact) {
  const auto result = first_order(normal_margin());
  ASSERT_TRUE(result);
  EXPECT_NEAR(result->beta, 2 / std::sqrt(1.25), 1e-9);
  EXPECT_NEAR(result->shares[0], 0.8, 1e-9);
  EXPECT_NEAR(result->derivatives[1], -1, 1e-9);
}

TEST(FirstOrder, CorrelationOfLoadAndStrengthNarrowsTheMargin) {
  const auto result = first_order(normal_margin(), {{0, 1, 0.6}});
  ASSERT_TRUE(result);
  EXPECT_NEAR(result->standard_deviation, std::sqrt(1 + 0.25 - 2 * 0.6 * 0.5), 1e-9);
  EXPECT_NEAR(result->shares[0] + result->shares[1], 1, 1e-12);
}

TEST(DesignPointOfALine, IsExact) {
  const auto limit = normal_margin();
  const auto point = find_design_point(limit);
  ASSERT_TRUE(point);
  EXPECT_FALSE(point->bracketed);
  EXPECT_NEAR(point->beta, 2 / std::sqrt(1.25), 1e-9);
  EXPECT_NEAR(point->values[0], point->values[1], 1e-7) << "there the margin is gone";
  EXPECT_NEAR(point->importance[0], 0.8, 1e-9);
  const auto correlated = find_design_point(limit, {{0, 1, 0.6}});
  ASSERT_TRUE(correlated);
  EXPECT_NEAR(correlated->beta, 2 / std::sqrt(0.65), 1e-9);
}

// General margin of two lognormal quantities: mean ratio 1.3, 10 % and 20 %.
TEST(DesignPointOfTwoLognormals, IsTheClosedForm) {
  const auto limit = lognormal_margin(1.3, 0.10, 0.20);
  const auto point = find_design_point(limit);
  ASSERT_TRUE(point);
  EXPECT_NEAR(point->beta, 1.2492, 0.0001);
  const auto space = ScoreSpace::of(limit, {});
  const auto sampled = Sampler(*space).chance(1 << 12);
  EXPECT_NEAR(sampled.probability, point->probability, 4 * sampled.standard_error);
  EXPECT_LT(sampled.standard_error, 0.0005);
}

TEST(DesignPointOfTwoLognormals, CorrelationIsThatOfTheLogarithms) {
  const auto limit = lognormal_margin(1.3, 0.10, 0.20);
  const std::vector<Correlation> correlations{{0, 1, 0.5}};
  const double zr = std::sqrt(std::log1p(0.01));
  const double zs = std::sqrt(std::log1p(0.04));
  const double mean = std::log(1.3) - zr * zr / 2 + zs * zs / 2;
  const double beta = mean / std::sqrt(zr * zr + zs * zs - 2 * 0.5 * zr * zs);
  const auto point = find_design_point(limit, correlations);
  ASSERT_TRUE(point);
  EXPECT_NEAR(point->beta, beta, 1e-8);
  const auto space = ScoreSpace::of(limit, correlations);
  const auto sampled = Sampler(*space).chance(1 << 12);
  EXPECT_NEAR(sampled.probability, normal_cumulative(-beta), 4 * sampled.standard_error);
}

// A margin so curved that the plain iteration swings from side to side: a³ + b³ − 18 with means 10
// and 9.9 and deviations of 5.
TEST(DesignPointByBracketing, IsFoundWhereTheIterationWanders) {
  const FormulaLimitState limit(
      {{"a", "a", *Distribution::normal(10, 5)}, {"b", "b", *Distribution::normal(9.9, 5)}},
      [](Values x) -> std::optional<double> {
        return x[0] * x[0] * x[0] + x[1] * x[1] * x[1] - 18;
      });
  const auto point = find_design_point(limit);
  ASSERT_TRUE(point) << point.problems().front().sentence();
  EXPECT_TRUE(point->bracketed);
  const auto margin = limit.margin(point->values);
  EXPECT_NEAR(*margin, 0, 1e-6);
  // Nothing nearer fails, looked for all round.
  for (int degree = 0; degree < 360; ++degree) {
    const double angle = degree * 3.14159265358979 / 180;
    const double radius = 0.97 * point->beta;
    const std::vector<double> there{10 + 5 * radius * std::cos(angle),
                                    9.9 + 5 * radius * std::sin(angle)};
    EXPECT_GT(*limit.margin(there), 0) << degree;
  }
}

TEST(DesignPointByBracketing, AMarginThatIsNegativeAtTheMediansHasANegativeBeta) {
  const auto limit = lognormal_margin(0.8, 0.10, 0.20);
  const auto point = find_design_point(limit);
  ASSERT_TRUE(point);
  EXPECT_LT(point->beta, 0);
  EXPECT_GT(point->probability, 0.5);
}

TEST(Sampling, SlicesAddUpToTheWhole) {
  const auto limit = normal_margin();
  const auto space = ScoreSpace::of(limit, {});
  const Sampler sampler(*space);
  const auto whole = sampler.run({3, 0, 5000});
  auto parts = sampler.run({3, 0, 1234});
  parts += sampler.run({3, 1234, 3766});
  EXPECT_EQ(parts.failures, whole.failures);
  EXPECT_EQ(parts.samples, whole.samples);
}

TEST(Sampling, TheErrorShrinksFasterThanByChance) {
  const auto limit = normal_margin();
  const auto space = ScoreSpace::of(limit, {});
  const auto few = Sampler(*space).chance(1 << 8);
  const auto many = Sampler(*space).chance(1 << 14);
  const double exact = normal_cumulative(-2 / std::sqrt(1.25));
  EXPECT_NEAR(few.probability, exact, 5 * few.standard_error);
  EXPECT_NEAR(many.probability, exact, 5 * many.standard_error);
  EXPECT_LT(many.standard_error, few.standard_error / 8) << "64 times the points";
}

TEST(Sampling, WhatHasNoAnswerCountsAsFailing) {
  const FormulaLimitState limit({{"a", "a", *Distribution::uniform(0, 1)}},
                                [](Values x) -> std::optional<double> {
                                  if (x[0] < 0.25) return std::nullopt;
                                  return 1;
                                });
  const auto space = ScoreSpace::of(limit, {});
  const auto sampled = Sampler(*space).chance(1 << 10);
  EXPECT_NEAR(sampled.probability, 0.25, 0.001);
  EXPECT_NEAR(static_cast<double>(sampled.unanswered) / static_cast<double>(sampled.samples), 0.25,
              0.001);
}

// Ishigami's function has published indices: 0.3139, 0.4424, 0 alone; 0.5576, 0.4424, 0.2437
// together (a 7, b 0.1).
TEST(SharesOfVariance, IshigamisFunction) {
  const double pi = 3.14159265358979323846;
  const auto uniform = *Distribution::uniform(-pi, pi);
  const FormulaLimitState limit({{"a", "a", uniform}, {"b", "b", uniform}, {"c", "c", uniform}},
                                [](Values x) -> std::optional<double> {
                                  return std::sin(x[0]) + 7 * std::sin(x[1]) * std::sin(x[1]) +
                                         0.1 * std::pow(x[2], 4) * std::sin(x[0]);
                                });
  const auto space = ScoreSpace::of(limit, {});
  const auto shares = variance_shares(*space, 1 << 14);
  ASSERT_TRUE(shares);
  EXPECT_NEAR(shares->alone[0], 0.3139, 0.005);
  EXPECT_NEAR(shares->alone[1], 0.4424, 0.005);
  EXPECT_NEAR(shares->alone[2], 0, 0.005);
  EXPECT_NEAR(shares->together[0], 0.5576, 0.005);
  EXPECT_NEAR(shares->together[1], 0.4424, 0.005);
  EXPECT_NEAR(shares->together[2], 0.2437, 0.005);
}

TEST(LimitStates, WhatCannotBeAnalysedIsAProblem) {
  const FormulaLimitState nothing({}, [](Values) -> std::optional<double> { return 1; });
  EXPECT_EQ(first_order(nothing).problems().front().code, "nothing-uncertain");
  const RandomVariable one{"a", "a", *Distribution::normal(0, 1)};
  const FormulaLimitState crowded(std::vector<RandomVariable>(33, one),
                                  [](Values x) -> std::optional<double> { return x[32]; });
  EXPECT_EQ(first_order(crowded).problems().front().code, "too-many-uncertain");
  const FormulaLimitState unmoved({{"a", "a", *Distribution::normal(0, 1)}},
                                  [](Values) -> std::optional<double> { return 1; });
  EXPECT_EQ(first_order(unmoved).problems().front().code, "nothing-moves");
  EXPECT_EQ(find_design_point(unmoved).problems().front().code, "form-not-settled");
  EXPECT_EQ(first_order(normal_margin(), {{0, 1, 1.5}}).problems().front().code, "bad-correlation");
  EXPECT_EQ(first_order(normal_margin(), {{0, 7, 0.5}}).problems().front().code, "bad-correlation");
}

}  // namespace
}  // namespace proofstone
