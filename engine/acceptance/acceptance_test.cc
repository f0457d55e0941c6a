#include <gtest/gtest.h>

#include <cmath>

#include "engine/acceptance/load_charts.h"
#include "engine/acceptance/run_length.h"
#include "engine/acceptance/sequential_plan.h"
#include "engine/acceptance/single_plan.h"
#include "engine/acceptance/two_piles.h"

namespace proofstone {
namespace {

TEST(TwoPiles, PublishedFourLaboratories) {
  // Scholz & Stephens 1987, smoothness of paper in four laboratories (data from memory).
  const auto result = rank_distance({{38.7, 41.5, 43.8, 44.5, 45.5, 46.0, 47.7, 58.0},
                                     {39.2, 39.3, 39.7, 41.4, 41.8, 42.9, 43.3, 45.8},
                                     {34.0, 35.0, 39.0, 40.0, 43.0, 43.0, 44.0, 45.0},
                                     {34.0, 34.8, 34.8, 35.4, 37.2, 37.8, 41.2, 42.8}});
  ASSERT_TRUE(result);
  EXPECT_NEAR(result->statistic, 8.3926, 1e-4);
  EXPECT_NEAR(result->standardised, 4.480, 1e-3);
  EXPECT_NEAR(result->chance, 0.002, 5e-4);
}

TEST(TwoPiles, SamePileNeverSeemsAnother) {
  const std::vector<double> pile{100, 120, 150, 150, 180, 210, 260};
  EXPECT_DOUBLE_EQ(largest_distance(pile, pile).distance, 0);
  EXPECT_DOUBLE_EQ(largest_distance(pile, pile).chance, 1);
  const auto apart = largest_distance({1, 2, 3, 4, 5}, {6, 7, 8, 9, 10});
  EXPECT_DOUBLE_EQ(apart.distance, 1);
  EXPECT_NEAR(apart.chance, 2.0 / 252, 1e-12);  // two of all C(10, 5) ways to deal
}

TEST(SequentialPlan, KeepsBothRisks) {
  for (const double good : {0.02, 0.05, 0.10, 0.15}) {
    for (const double worse : {0.10, 0.15, 0.25}) {
      ShareRisks risks;
      risks.acceptable = Dimensionless::number(good);
      risks.unacceptable = Dimensionless::number(good + worse);
      const auto plan = SequentialPlan::make(risks);
      ASSERT_TRUE(plan);
      const auto when_good = plan->operation(good);
      const auto when_bad = plan->operation(good + worse);
      // Wald's lines keep the sum of both risks; ending early adds next to nothing.
      EXPECT_LE(1 - when_good.accepted + when_bad.accepted, 0.15 + 0.005);
      // At either share the sequential count needs fewer stones on average than the single plan.
      EXPECT_LT(when_good.average_stones, plan->single_plan_stones());
      EXPECT_LT(when_bad.average_stones, plan->single_plan_stones());
    }
  }
}

TEST(SequentialPlan, WorseRockIsAcceptedLessOften) {
  const auto plan = SequentialPlan::make({});
  ASSERT_TRUE(plan);
  double before = 1.1;
  for (int percent = 0; percent <= 100; percent += 5) {
    const auto now = plan->operation(percent / 100.0);
    EXPECT_LT(now.accepted, before + 1e-12);
    EXPECT_GE(now.accepted, 0);
    EXPECT_GE(now.average_stones, 1);
    before = now.accepted;
  }
  EXPECT_NEAR(plan->operation(0).accepted, 1, 1e-12);
  EXPECT_NEAR(plan->operation(1).accepted, 0, 1e-12);
}

TEST(SinglePlan, KeepsBothRisksWithNoStoneTooMany) {
  ShareRisks risks;
  const auto plan = single_plan(risks);
  ASSERT_TRUE(plan);
  EXPECT_GE(chance_of_acceptance(*plan, 0.10), 0.95);
  EXPECT_LE(chance_of_acceptance(*plan, 0.30), 0.10);
  for (int accept = 0; accept < plan->stones; ++accept) {
    const SinglePlan fewer{plan->stones - 1, accept};
    EXPECT_FALSE(chance_of_acceptance(fewer, 0.10) >= 0.95 &&
                 chance_of_acceptance(fewer, 0.30) <= 0.10);
  }
}

TEST(RunLength, SettingsGiveTheRunLengthAsked) {
  for (const double loads : {2.0, 50.0, 168.0, 465.0, 10000.0}) {
    const double h = interval_for_run_length(0.5, loads);
    EXPECT_NEAR(run_length(CumulativeSumChart{0.5, h, 0}, 0), loads, 1e-6 * loads);
    const double limits = limits_for_run_length(0.2, loads);
    if (limits > 0.5) {
      EXPECT_NEAR(run_length(MovingAverageChart{0.2, limits}, 0), loads, 1e-6 * loads);
    }
  }
  // What no setting gives is answered by the end that comes nearest.
  EXPECT_EQ(limits_for_run_length(0.2, 1.5), 0.5);
  EXPECT_EQ(interval_for_run_length(0, 10000), 20);
}

TEST(RunLength, OfAnAverageWithoutShiftIsThatOfAShiftOfNextToNothing) {
  // Without a shift the system is folded at the target; with one it is not.
  for (const double weight : {0.05, 0.2, 0.75, 1.0}) {
    const MovingAverageChart chart{weight, 2.7};
    EXPECT_NEAR(run_length(chart, 0) / run_length(chart, 1e-9), 1, 1e-9);
  }
}

TEST(LoadCharts, MirroredSupplyMirrorsTheSums) {
  const std::vector<double> values{402, 395, 410, 388, 371};
  std::vector<double> mirrored;
  for (const double value : values) mirrored.push_back(800 - value);
  const CumulativeSumSettings settings{400, 4, 32, 0};
  const auto sums = cumulative_sums(values, settings);
  const auto mirror = cumulative_sums(mirrored, settings);
  EXPECT_EQ(sums.upper, mirror.lower);
  EXPECT_EQ(sums.lower, mirror.upper);
}

}  // namespace
}  // namespace proofstone
