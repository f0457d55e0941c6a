#include "engine/acceptance/count_state.h"

#include <gtest/gtest.h>

#include <random>

#include "engine/acceptance/count_plan.h"
#include "engine/acceptance/sequential_plan.h"

namespace proofstone {
namespace {

Length in(double size) { return Length::inches(size); }

GradationBand half_below(double size) {
  return *GradationBand::from_size_windows({{50, in(size), std::nullopt}}, {});
}

/// FP-14 Table 705-1 class 3, without what it asks of the largest stones (read in a document that
/// quotes it).
GradationBand class_three() {
  return *GradationBand::from_size_windows(
      {{15, in(8), in(10)}, {50, in(11), in(14)}, {85, in(15), in(19)}}, {});
}

TEST(CountedLimits, PutGoodRockInsideTheLimit) {
  const auto limits = counted_limits(class_three(), {0.05, 0.06}, 0.10);
  ASSERT_EQ(limits.size(), 6U);
  // "D15 at least 8 in": at most 15 % smaller; 5 % is good, and 1 % of the risk is its share.
  const auto& fine = limits.front();
  EXPECT_TRUE(fine.smaller_is_wrong);
  EXPECT_NEAR(fine.risks.unacceptable.number(), 0.15, 1e-12);
  EXPECT_NEAR(fine.risks.acceptable.number(), 0.05, 1e-12);
  EXPECT_NEAR(fine.risks.producers_risk.number(), 0.01, 1e-12);
  EXPECT_NEAR(fine.risks.owners_risk.number(), 0.05, 1e-12);
  EXPECT_TRUE(fine.is_wrong(in(7.9)));
  EXPECT_FALSE(fine.is_wrong(in(8)));
}

TEST(CountState, StopsWhereTheLineIsCrossed) {
  const auto limits = counted_limits(half_below(12), {0.05, 0.05}, 0.20);
  ASSERT_EQ(limits.size(), 1U);
  const auto lines = SequentialLines::make(limits[0].risks);
  ASSERT_TRUE(lines);
  const std::vector<Length> coarse(60, in(15));
  const auto state = count_state(limits, coarse);
  EXPECT_EQ(state.outcome, Outcome::meets);
  EXPECT_EQ(state.limits[0].decided_at, lines->first_acceptance());
  const std::vector<Length> fine(60, in(9));
  const auto turned = count_state(limits, fine);
  EXPECT_EQ(turned.outcome, Outcome::falls_short);
  // Each stone that is wrong turns away once the line lies under the number counted.
  int first = 1;
  while (!lines->reject_at_least(first)) ++first;
  EXPECT_EQ(turned.limits[0].decided_at, first);
  std::vector<Length> undecided;
  for (int i = 0; i < 10; ++i) undecided.push_back(in(i % 5 < 2 ? 9 : 15));
  EXPECT_EQ(count_state(limits, undecided).outcome, Outcome::not_yet_known);
}

TEST(CountState, BinsGiveTheSameEndAsStones) {
  const auto limits = counted_limits(class_three(), {0.05, 0.05}, 0.10);
  std::mt19937 random(7);
  const std::vector<double> edges{8, 10, 11, 14, 15, 19, 27};
  for (int trial = 0; trial < 50; ++trial) {
    std::vector<CountBin> bins;
    std::vector<Length> stones;
    for (std::size_t i = 0; i < edges.size(); ++i) {
      CountBin bin;
      if (i > 0) bin.lower = in(edges[i - 1]);
      bin.upper = in(edges[i]);
      bin.stones = static_cast<int>(random() % 30);
      const double middle = i > 0 ? (edges[i - 1] + edges[i]) / 2 : 6;
      stones.insert(stones.end(), static_cast<std::size_t>(bin.stones), in(middle));
      bins.push_back(bin);
    }
    const auto binned = count_state(limits, bins);
    const auto counted = count_state(limits, stones);
    for (std::size_t i = 0; i < limits.size(); ++i) {
      EXPECT_EQ(binned.limits[i].wrong, counted.limits[i].wrong);
      EXPECT_EQ(binned.limits[i].stones, counted.limits[i].stones);
      EXPECT_FALSE(binned.limits[i].decided_at);
    }
  }
}

TEST(CountState, LimitInsideABinIsOpen) {
  const auto limits = counted_limits(half_below(12), {0.05, 0.05}, 0.20);
  CountBin across;
  across.lower = in(6);
  across.upper = in(24);
  across.stones = 500;
  EXPECT_EQ(count_state(limits, std::vector<CountBin>{across}).outcome, Outcome::not_yet_known);
}

TEST(CountState, OneStoneTooLargeIsEnough) {
  const auto band = *GradationBand::from_size_windows({{100, std::nullopt, in(24)}}, {});
  const auto limits = counted_limits(band, {0.05, 0.05}, 0.10);
  ASSERT_EQ(limits.size(), 1U);
  EXPECT_EQ(limits[0].stones_without_wrong, 59);  // 0.95^59 = 0.0485
  std::vector<Length> stones(100, in(12));
  EXPECT_EQ(count_state(limits, stones).limits[0].decided_at, 59);
  stones.back() = in(24);
  EXPECT_EQ(count_state(limits, stones).outcome, Outcome::meets);
  stones.back() = in(24.5);
  EXPECT_EQ(count_state(limits, stones).outcome, Outcome::falls_short);
}

TEST(CountState, KeepsTheRisksOfTheWholeBand) {
  // Rock drawn at random: at the limit of one condition (accepted too often?) and good at all of
  // them (turned away too often?). 2,000 counts each; four standard errors are allowed.
  const DecisionRisks risks{0.05, 0.05};
  const auto limits = counted_limits(class_three(), risks, 0.10);
  std::mt19937 random(20260520);
  const auto rate = [&](const std::vector<double>& shares, Outcome outcome) {
    // Shares smaller than 8, 10, 11, 14, 15 and 19 in.
    const std::vector<double> sizes{7, 9, 10.5, 12, 14.5, 17, 22};
    int times = 0;
    constexpr int counts = 2000;
    for (int count = 0; count < counts; ++count) {
      std::vector<Length> stones;
      for (int i = 0; i < 600; ++i) {
        const double drawn = static_cast<double>(random()) / 4294967296.0;
        std::size_t at = 0;
        while (at < shares.size() && drawn >= shares[at]) ++at;
        stones.push_back(in(sizes[at]));
      }
      if (count_state(limits, stones).outcome == outcome) ++times;
    }
    return times / static_cast<double>(counts);
  };
  constexpr double error = 0.0195;  // 4·√(0.05·0.95/2000)
  EXPECT_LE(rate({0.15, 0.26, 0.39, 0.61, 0.74, 0.96}, Outcome::meets), risks.owners + error);
  EXPECT_LE(rate({0.05, 0.25, 0.40, 0.60, 0.75, 0.95}, Outcome::falls_short),
            risks.producers + error);
}

TEST(CountPlan, TakesTheHardestLimit) {
  const auto plan = count_plan(class_three(), {0.05, 0.05}, 0.10);
  ASSERT_TRUE(plan);
  ASSERT_EQ(plan->limits.size(), 6U);
  for (const auto& one : plan->limits) {
    EXPECT_LE(one.stones, plan->stones);
    EXPECT_LT(one.average_when_good, one.stones);
    EXPECT_LT(one.average_at_limit, one.stones);
    EXPECT_LE(one.first_acceptance, one.stones);
  }
  EXPECT_EQ(plan->limits[plan->hardest].stones, plan->stones);
  EXPECT_EQ(plan->limits[plan->hardest].limit.condition.percent, 50);
  const auto looser = count_plan(class_three(), {0.10, 0.10}, 0.15);
  ASSERT_TRUE(looser);
  EXPECT_LT(looser->stones, plan->stones);
}

}  // namespace
}  // namespace proofstone
