// The stated confidence and risks, held against piles whose rock is known; and the handbook's page
// of it.
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>
#include <vector>

#include "engine/acceptance/sequential_plan.h"
#include "simulation/simulation_page.h"

namespace proofstone {
namespace {

const SimulationResults& results() {
  static const SimulationResults run = run_simulation();
  return run;
}

/// What is promised of intervals stated at 90 %.
constexpr double least_held = 0.87;
constexpr double most_held = 0.93;

TEST(Simulation, StatedIntervalsHoldAsStated) {
  int rows = 0;
  for (const auto& [looks, pile, observer, held] : results().coverage) {
    if (observer.one_end) continue;
    ++rows;
    std::vector<double> shares{held.all_sizes};
    shares.insert(shares.end(), held.percent_smaller.begin(), held.percent_smaller.end());
    shares.insert(shares.end(), held.size.begin(), held.size.end());
    for (const double share : shares) {
      EXPECT_GE(share, least_held) << looks;
      EXPECT_LE(share, most_held) << looks;
    }
  }
  EXPECT_EQ(rows, 13);
  EXPECT_GE(rows * looks_a_row, 50'000);
}

/// Of two thousand pairs, three standard deviations of a share of 5 %.
constexpr double scatter_of_five = 0.015;

TEST(Simulation, LooksAtTheSameRockAreSeldomFoundDifferent) {
  for (const auto& row : results().comparisons) {
    EXPECT_LE(row.same_rock, 0.05 + scatter_of_five) << row.looks;
    EXPECT_GT(row.tenth_coarser, row.same_rock) << row.looks;
    EXPECT_GT(row.quarter_coarser, 0.4) << row.looks;
  }
}

TEST(Simulation, ACountAtOneEndOfASegregatedPileMisleads) {
  const auto& row = results().coverage.back();
  ASSERT_TRUE(row.observer.one_end);
  EXPECT_LT(row.held.percent_smaller[1], 0.5);
}

TEST(Simulation, BothPlansKeepTheirRisks) {
  constexpr double chance = 0.01;  // of ten thousand counts, three standard deviations
  for (const auto& [risks, share, single, sequential] : results().plans) {
    const bool good = share <= risks.acceptable.number();
    const bool bad = share >= risks.unacceptable.number() - 1e-9;
    if (good) {
      EXPECT_GE(single.accepted, 0.95 - chance) << share;
      EXPECT_GE(sequential.accepted, 0.95 - chance) << share;
    } else if (bad) {
      EXPECT_LE(single.accepted, 0.10 + chance) << share;
      EXPECT_LE(sequential.accepted, 0.10 + chance) << share;
    } else {
      EXPECT_GT(sequential.accepted, 0.10) << share;
      EXPECT_LT(sequential.accepted, 0.95) << share;
    }
    if (good || bad) {
      EXPECT_LE(sequential.average_stones, 0.65 * single.average_stones) << share;
    }
  }
}

// What the handbook draws is computed by recursion; counts one by one find the same.
TEST(Simulation, CountsFollowTheComputedCurves) {
  for (const auto& [risks, share, single, sequential] : results().plans) {
    const auto plan = SequentialPlan::make(risks);
    ASSERT_TRUE(plan) << share;
    const auto computed = plan->operation(share);
    // Four standard deviations of a share of ten thousand; of the stones, no more than 3 %.
    EXPECT_NEAR(sequential.accepted, computed.accepted, 0.02) << share;
    EXPECT_NEAR(sequential.average_stones, computed.average_stones, 0.03 * computed.average_stones)
        << share;
  }
}

TEST(Simulation, TheNeighbourRuleFindsMissingEndsAndAcceptsTooMuch) {
  for (const auto& [stones, found] : results().neighbour_rule) {
    ASSERT_GT(found.truly_inside, 300) << stones;
    EXPECT_GT(found.yes_when_inside(), stones >= 100 ? 0.97 : 0.85) << stones;
    EXPECT_GT(found.yes_when_outside(), 0.5) << stones;
  }
}

TEST(Simulation, ThePageOfTheHandbookIsWhatItShows) {
  std::ifstream stream(PROOFSTONE_SOURCE_FOLDER "/docs/simulation.md", std::ios::binary);
  std::ostringstream page;
  page << stream.rdbuf();
  EXPECT_EQ(page.str(), simulation_page(results()))
      << "docs/simulation.md is behind: build/native/simulate docs";
}

}  // namespace
}  // namespace proofstone
