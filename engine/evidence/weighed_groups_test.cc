#include <gtest/gtest.h>

#include <limits>

#include "engine/evidence/measured_gradation.h"
#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

Length mm(double size) { return Length::millimeters(size); }
Mass kg(double mass) { return Mass::kilograms(mass); }

std::vector<WeighedGroup> sample() {
  return {{std::nullopt, mm(100), kg(40), 0},
          {mm(100), mm(200), kg(160), 20},
          {mm(200), mm(300), kg(600), 15},
          {mm(300), mm(450), kg(700), 6}};
}

bool mentions(const MeasuredGradation& measured, const std::string& words) {
  for (const auto& caution : measured.cautions) {
    if (caution.find(words) != std::string::npos) return true;
  }
  return false;
}

std::string only_problem(const std::vector<WeighedGroup>& groups) {
  const auto measured = gradation_from_weighed(groups, SizeMeaning::sieve);
  if (measured) return "no problem";
  return measured.problems().front().code + " at " + measured.problems().front().where;
}

TEST(GradationFromWeighed, CumulatesMassOverGroups) {
  const auto measured = gradation_from_weighed(sample(), SizeMeaning::sieve);
  ASSERT_TRUE(measured);
  EXPECT_EQ(measured->curve.basis().size, SizeMeaning::sieve);
  EXPECT_NEAR(measured->curve.percent_smaller(mm(100)), 100.0 * 40 / 1500, 1e-9);
  EXPECT_NEAR(measured->curve.percent_smaller(mm(200)), 100.0 * 200 / 1500, 1e-9);
  EXPECT_NEAR(measured->curve.percent_smaller(mm(300)), 100.0 * 800 / 1500, 1e-9);
  EXPECT_DOUBLE_EQ(measured->curve.percent_smaller(mm(450)), 100);
  EXPECT_EQ(measured->stones, 41);
  EXPECT_FALSE(measured->picked_on_grid);
  EXPECT_DOUBLE_EQ(measured->seen_larger_than->millimeters(), 300);
  EXPECT_TRUE(mentions(*measured, "were not counted"));
}

TEST(GradationFromWeighed, EffectiveStonesAreMassSquaredOverSumOfSquares) {
  auto groups = sample();
  groups.erase(groups.begin());
  const auto measured = gradation_from_weighed(groups, SizeMeaning::sieve);
  ASSERT_TRUE(measured);
  const double squares = 20 * 8.0 * 8 + 15 * 40.0 * 40 + 6 * (700.0 / 6) * (700.0 / 6);
  EXPECT_NEAR(measured->effective_stones, 1460.0 * 1460 / squares, 1e-9);
  EXPECT_LT(measured->effective_stones_at(mm(300)), measured->effective_stones);
}

TEST(GradationFromWeighed, StonesOfOneMassAreWorthNearlyTheirCount) {
  const auto measured = gradation_from_weighed(
      {{mm(200), mm(250), kg(400), 20}, {mm(250), mm(300), kg(600), 30}}, SizeMeaning::sphere);
  ASSERT_TRUE(measured);
  EXPECT_NEAR(measured->effective_stones, 50, 1e-9);
  // Less the scatter of the masses within a group, 4 % and 3 % of the mean squared.
  for (const double there : measured->effective_at_points) {
    EXPECT_LE(there, 50);
    EXPECT_GT(there, 48);
  }
}

TEST(GradationFromWeighed, DoubtsAMeanStoneThatDoesNotFit) {
  auto groups = sample();
  groups[2].mass = kg(600 * 2.2046 * 2);  // pounds written as kilograms, and half the count
  groups[2].stones = 7;
  const auto measured = gradation_from_weighed(groups, SizeMeaning::sieve);
  ASSERT_TRUE(measured);
  EXPECT_TRUE(mentions(*measured, "group 3"));
  EXPECT_TRUE(mentions(*measured, "check the units"));
  EXPECT_FALSE(mentions(*gradation_from_weighed(sample(), SizeMeaning::sieve), "check the units"));
}

TEST(GradationFromWeighed, CautionsAboutASampleTooSmallForItsLargestStone) {
  const auto measured = gradation_from_weighed(sample(), SizeMeaning::sieve);
  ASSERT_TRUE(measured);
  EXPECT_TRUE(mentions(*measured, "single stone moves the curve"));
}

TEST(GradationFromWeighed, BadInputNamesTheGroup) {
  constexpr double nan = std::numeric_limits<double>::quiet_NaN();
  EXPECT_EQ(only_problem({}), "empty at ");
  auto groups = sample();
  groups[1].mass = kg(-1);
  EXPECT_EQ(only_problem(groups), "negative-mass at group 2");
  groups[1].mass = kg(nan);
  EXPECT_EQ(only_problem(groups), "not-a-number at group 2");
  groups[1].mass = kg(1e9);
  EXPECT_EQ(only_problem(groups), "mass-too-large at group 2");
  groups[1].mass = kg(0);
  EXPECT_EQ(only_problem(groups), "missing-mass at group 2");
  groups = sample();
  groups[3].stones = -2;
  EXPECT_EQ(only_problem(groups), "count-not-believable at group 4");
  groups = sample();
  groups[2].lower = mm(210);
  EXPECT_EQ(only_problem(groups), "gap at group 3");
  groups = sample();
  for (auto& group : groups) group.mass = kg(0);
  for (auto& group : groups) group.stones = 0;
  EXPECT_EQ(only_problem(groups), "no-mass at ");
}

TEST(Pooled, AddsCountsOfGridLooks) {
  const std::vector<CountBin> first{{mm(100), mm(200), 30}, {mm(200), mm(400), 20}};
  const std::vector<CountBin> second{{mm(100), mm(200), 40}, {mm(200), mm(400), 60}};
  const auto a = gradation_from_bins(first, StonePicking::grid);
  const auto b = gradation_from_bins(second, StonePicking::grid);
  ASSERT_TRUE(a && b);
  const auto together = pooled({*a, *b});
  ASSERT_TRUE(together);
  EXPECT_NEAR(together->curve.percent_smaller(mm(200)), 100.0 * 70 / 150, 1e-9);
  EXPECT_DOUBLE_EQ(together->effective_stones, 150);
  EXPECT_NEAR(together->effective_stones_at(mm(200)), 150, 1e-9);
  EXPECT_EQ(together->stones, 150);
  EXPECT_TRUE(together->picked_on_grid);
  EXPECT_DOUBLE_EQ(together->seen_larger_than->millimeters(), 200);
}

TEST(Pooled, StartsWhereEveryLookKnowsTheShare) {
  const auto open = gradation_from_bins({{std::nullopt, mm(150), 30}, {mm(150), mm(400), 70}},
                                        StonePicking::grid);
  const auto closed =
      gradation_from_bins({{mm(50), mm(200), 50}, {mm(200), mm(400), 50}}, StonePicking::grid);
  ASSERT_TRUE(open && closed);
  const auto together = pooled({*open, *closed});
  ASSERT_TRUE(together);
  EXPECT_DOUBLE_EQ(together->curve.points().front().size.millimeters(), 150);
  EXPECT_GT(together->curve.points().front().percent_smaller, 30);
}

TEST(Pooled, RefusesNoLookAndMixedBases) {
  EXPECT_FALSE(pooled({}));
  const auto count = gradation_from_bins({{mm(100), mm(200), 30}}, StonePicking::grid);
  const auto weighed = gradation_from_weighed(sample(), SizeMeaning::sphere);
  ASSERT_TRUE(count && weighed);
  const auto together = pooled({*count, *weighed});
  ASSERT_FALSE(together);
  EXPECT_EQ(together.problems().front().code, "different-basis");
  EXPECT_EQ(together.problems().front().where, "look 2");
}

TEST(Pooled, OneLookIsItself) {
  const auto look = gradation_from_weighed(sample(), SizeMeaning::sphere);
  ASSERT_TRUE(look);
  const auto together = pooled({*look});
  ASSERT_TRUE(together);
  EXPECT_EQ(together->method, "weighed sample");
  EXPECT_EQ(together->curve.points().size(), look->curve.points().size());
}

}  // namespace
}  // namespace proofstone
