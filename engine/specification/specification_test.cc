#include "engine/specification/specification.h"

#include <gtest/gtest.h>

#include <cmath>
#include <nlohmann/json.hpp>

#include "engine/site/example_document.h"

namespace proofstone {
namespace {

using Sense = BandCondition::Sense;

void expect_counts(double percent, double level, int at_most, int at_least) {
  const auto less = count_limits(Sense::at_most, percent, 100, level);
  ASSERT_TRUE(less.shown && less.broken);
  EXPECT_EQ(*less.shown, at_most);
  EXPECT_EQ(*less.broken, at_least);
  const auto more = count_limits(Sense::at_least, percent, 100, level);
  ASSERT_TRUE(more.shown && more.broken);
  EXPECT_EQ(*more.shown, at_least);
  EXPECT_EQ(*more.broken, at_most);
}

// Worked apart from this engine from the exact binomial tail.
TEST(CountLimits, AreTheExactBinomialOnesForAHundredStones) {
  expect_counts(15, 0.95, 8, 22);
  expect_counts(50, 0.95, 41, 59);
  expect_counts(85, 0.95, 78, 92);
}

TEST(CountLimits, AreWiderForSixLimitsTogether) {
  const double level = 1 - 0.05 / 6;
  expect_counts(15, level, 6, 25);
  expect_counts(50, level, 37, 63);
  expect_counts(85, level, 75, 94);
}

TEST(CountLimits, FewStonesMayShowNothing) {
  const auto limits = count_limits(Sense::at_most, 15, 5, 0.95);
  EXPECT_FALSE(limits.shown);
  EXPECT_TRUE(limits.broken);
}

TEST(Specification, HoldsTheBandAsSizesMassesAndCounts) {
  const ExampleDocument example;
  const auto site = site_from(example.document());
  ASSERT_TRUE(site);
  const auto whole = specification_of(*site);
  ASSERT_EQ(whole.classes.size(), 1U);
  const auto& rock = whole.classes.front();
  EXPECT_EQ(rock.id, "fhwa-3");
  ASSERT_EQ(rock.places.size(), 1U);
  EXPECT_NEAR(rock.places[0].thickness.inches(), 24, 1e-9);
  bool median = false;
  for (const auto& row : rock.sizes) {
    if (row.percent < 49 || row.percent > 51) continue;
    median = true;
    ASSERT_TRUE(row.least && row.most && row.least_mass);
    EXPECT_NEAR(row.least->inches(), 11.5, 1e-9);
    EXPECT_NEAR(row.most->inches(), 14, 1e-9);
    // 0.85·ρ·D³ with the mean specific gravity 2.625 of the example's source.
    EXPECT_NEAR(row.least_mass->kilograms(), 0.85 * 2625 * std::pow(11.5 * 0.0254, 3), 1e-6);
  }
  EXPECT_TRUE(median);
  EXPECT_EQ(rock.limits.size(), 7U);
  EXPECT_FALSE(whole.rock_limits_chosen);
  EXPECT_GT(whole.rock_limits.size(), 10U);
}

}  // namespace
}  // namespace proofstone
