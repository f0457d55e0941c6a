#include "engine/blend/load_plan.h"

#include <gtest/gtest.h>

#include <limits>

#include "engine/blend/blend_examples.h"

namespace proofstone {
namespace {

TwoAggregates with_loads() {
  TwoAggregates example;
  example.materials[0].price_per_tonne = 30;
  example.materials[1].price_per_tonne = 12;
  for (auto& material : example.materials) material.load = Mass::tonnes(20);
  return example;
}

/// The cheapest plan of two materials by trying all.
double cheapest_by_trying(const BlendTarget& target, const TwoAggregates& example, double tonnes) {
  double best = 1e300;
  for (int a = 0; a <= 60; ++a) {
    for (int b = 0; b <= 60; ++b) {
      if ((a + b) * 20 < tonnes || a + b == 0) continue;
      const double share = static_cast<double>(a) / (a + b);
      if (target.margin({share, 1 - share}) < -1e-9) continue;
      best = std::min(best, a * 20 * *example.materials[0].price_per_tonne +
                                b * 20 * *example.materials[1].price_per_tonne);
    }
  }
  return best;
}

TEST(LoadPlan, TheCheapestWholeLoadsAreThoseThatTryingAllGives) {
  const auto example = with_loads();
  const auto target = *blend_target(example.materials, example.band);
  for (const double tonnes : {1.0, 60.0, 130.0, 500.0, 777.0}) {
    const auto plan = cheapest_loads(target, example.materials, {Mass::tonnes(tonnes)});
    ASSERT_TRUE(plan) << tonnes;
    EXPECT_TRUE(plan->proven);
    EXPECT_NEAR(plan->cost, cheapest_by_trying(target, example, tonnes), 1e-6) << tonnes;
    EXPECT_GE(plan->mass.tonnes(), tonnes - 1e-9);
    EXPECT_GE(plan->margin, -1e-6);
  }
}

TEST(LoadPlan, NoMoreIsTakenThanThereIs) {
  auto example = with_loads();
  example.materials[0].available = Mass::tonnes(41);
  const auto target = *blend_target(example.materials, example.band);
  const auto plan = cheapest_loads(target, example.materials, {Mass::tonnes(90)});
  ASSERT_TRUE(plan);
  EXPECT_EQ(plan->loads[0], 2);
  const auto short_of = cheapest_loads(target, example.materials, {Mass::tonnes(500)});
  ASSERT_FALSE(short_of);
  EXPECT_EQ(short_of.problems().front().code, "no-blend-serves");
}

TEST(LoadPlan, ARecipeOfWholeBuckets) {
  const auto example = with_loads();
  const auto target = *blend_target(example.materials, example.band);
  const auto recipe = best_recipe(target, 12);
  ASSERT_TRUE(recipe);
  EXPECT_TRUE(recipe->proven);
  // 5 of 12 is 0.4167, 2 of 5 is 0.4: of all shares with 12 buckets or fewer the best by trying.
  double best = -100;
  for (int all = 1; all <= 12; ++all) {
    for (int a = 0; a <= all; ++a) {
      const double share = static_cast<double>(a) / all;
      best = std::max(best, target.margin({share, 1 - share}));
    }
  }
  EXPECT_NEAR(recipe->margin, best, 0.05 + 1e-9);
  EXPECT_EQ(best_recipe(target, 1).problems().front().code, "no-blend-serves");
  EXPECT_EQ(best_recipe(target, 0).problems().front().code, "buckets-out-of-range");
  EXPECT_EQ(best_recipe(target, 1000).problems().front().code, "buckets-out-of-range");
}

/// The least cost of what is added to a load of a round, by trying all rounds of two materials.
double cheapest_round_by_trying(const BlendTarget& target, const std::vector<double>& costs,
                                std::size_t kept, int most) {
  double best = 1e300;
  for (int all = 2; all <= most; ++all) {
    for (int a = 0; a <= all; ++a) {
      if ((kept == 0 ? a : all - a) < 1) continue;
      const double share = static_cast<double>(a) / all;
      if (target.margin({share, 1 - share}) < -1e-9) continue;
      best = std::min(best, (a * costs[0] + (all - a) * costs[1]) / all);
    }
  }
  return best;
}

TEST(LoadPlan, TheCheapestRoundIsTheOneThatTryingAllGives) {
  const auto example = with_loads();
  const auto target = *blend_target(example.materials, example.band);
  for (const int most : {5, 9, 10, 24}) {
    for (const auto& costs : {std::vector<double>{0, 12}, std::vector<double>{30, 0},
                              std::vector<double>{7, 7}, std::vector<double>{0, 0}}) {
      for (const std::size_t kept : {0U, 1U}) {
        const auto round = cheapest_round(target, costs, kept, most);
        ASSERT_TRUE(round) << most;
        EXPECT_NEAR(round->cost, cheapest_round_by_trying(target, costs, kept, most), 1e-6) << most;
        EXPECT_TRUE(round->proven);
        EXPECT_GE(round->loads[kept], 1);
        EXPECT_LE(round->loads[0] + round->loads[1], most);
        EXPECT_GE(round->margin, -1e-6);
      }
    }
  }
}

TEST(LoadPlan, BadRoundsAreNamed) {
  const auto example = with_loads();
  const auto target = *blend_target(example.materials, example.band);
  const auto code = [&](const std::vector<double>& costs, std::size_t kept, int most) {
    const auto round = cheapest_round(target, costs, kept, most);
    return round ? std::string() : round.problems().front().code;
  };
  EXPECT_EQ(code({0, 12}, 0, 1), "loads-out-of-range");
  EXPECT_EQ(code({0, 12}, 0, 41), "loads-out-of-range");
  EXPECT_EQ(code({0, -1}, 0, 10), "bad-cost");
  EXPECT_EQ(code({0, std::numeric_limits<double>::quiet_NaN()}, 0, 10), "bad-cost");
  EXPECT_EQ(code({0}, 0, 10), "bad-cost");
  EXPECT_EQ(code({0, 12}, 2, 10), "bad-cost");
  // Shares between 0.3556 and 0.4923 serve: no two loads have one.
  EXPECT_EQ(code({0, 12}, 0, 2), "no-blend-serves");
}

TEST(LoadPlan, BadOrdersAreNamed) {
  auto example = with_loads();
  const auto target = *blend_target(example.materials, example.band);
  const auto code = [&](Mass mass) {
    return cheapest_loads(target, example.materials, {mass}).problems().front().code;
  };
  EXPECT_EQ(code(Mass::tonnes(0)), "not-positive");
  EXPECT_EQ(code(Mass::tonnes(-3)), "not-positive");
  EXPECT_EQ(code(Mass::tonnes(std::numeric_limits<double>::quiet_NaN())), "not-positive");
  EXPECT_EQ(code(Mass::tonnes(1e9)), "too-many-loads");
  example.materials[1].load.reset();
  EXPECT_EQ(code(Mass::tonnes(50)), "load-not-known");
}

TEST(LinearProgram, InfeasibleAndUnboundedAreTold) {
  LinearProgram program;
  program.add_variable(-1);
  EXPECT_EQ(solve(program).status, ProgramStatus::unbounded);
  program.rows.push_back({{1}, LinearRow::Sense::at_most, 4});
  const auto good = solve(program);
  ASSERT_EQ(good.status, ProgramStatus::optimal);
  EXPECT_NEAR(good.x[0], 4, 1e-12);
  program.rows.push_back({{1}, LinearRow::Sense::at_least, 5});
  EXPECT_EQ(solve(program).status, ProgramStatus::infeasible);
  program.upper[0] = -1;
  EXPECT_EQ(solve(program).status, ProgramStatus::infeasible);
}

TEST(IntegerProgram, SaysWhenTheWorkWasNotEnough) {
  IntegerProgram program;
  LinearRow row;
  for (int i = 0; i < 12; ++i) {
    program.linear.add_variable(-(10 + i % 5), 0, 7);
    program.whole.push_back(true);
    row.coefficients.push_back(7 + (i * 5) % 9 + 0.1 * i);
  }
  row.bound = 100.37;
  program.linear.rows.push_back(row);
  const auto cut = solve(program, 3);
  EXPECT_FALSE(cut.proven);
  const auto whole = solve(program);
  EXPECT_TRUE(whole.proven);
  EXPECT_NEAR(whole.value, whole.bound, 1e-9);
  EXPECT_LE(cut.bound, whole.value + 1e-9);
}

}  // namespace
}  // namespace proofstone
