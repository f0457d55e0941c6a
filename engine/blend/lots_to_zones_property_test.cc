#include <gtest/gtest.h>

#include <limits>
#include <random>

#include "engine/blend/lots_to_zones.h"

namespace proofstone {
namespace {

struct Best {
  std::size_t served = 0;
  double cost = std::numeric_limits<double>::infinity();
};

/// Every way to give each zone one lot or none.
void try_all(const LotsToZones& question, std::size_t zone, std::vector<double>& used,
             std::size_t served, double cost, Best& best) {
  if (zone == question.cost.front().size()) {
    if (served > best.served || (served == best.served && cost < best.cost)) best = {served, cost};
    return;
  }
  try_all(question, zone + 1, used, served, cost, best);
  for (std::size_t lot = 0; lot < question.cost.size(); ++lot) {
    if (!question.cost[lot][zone]) continue;
    const double need = question.need[lot][zone];
    if (question.available[lot] && used[lot] + need > *question.available[lot] + 1e-9) continue;
    used[lot] += need;
    try_all(question, zone + 1, used, served + 1, cost + *question.cost[lot][zone], best);
    used[lot] -= need;
  }
}

TEST(LotsToZones, IsAsGoodAsTheBestOfAllWays) {
  std::mt19937 random(20260519);
  const auto number = [&random](unsigned most) { return static_cast<double>(random() % most); };
  for (int trial = 0; trial < 300; ++trial) {
    const std::size_t lots = 1 + random() % 4;
    const std::size_t zones = 1 + random() % 5;
    LotsToZones question;
    for (std::size_t lot = 0; lot < lots; ++lot) {
      question.cost.emplace_back();
      question.need.emplace_back();
      for (std::size_t zone = 0; zone < zones; ++zone) {
        const bool may = random() % 4 != 0;
        question.cost.back().push_back(may ? std::optional(100 + number(900)) : std::nullopt);
        question.need.back().push_back(10 + number(90));
      }
      const bool endless = random() % 3 == 0;
      question.available.push_back(endless ? std::nullopt : std::optional(number(200)));
    }
    Best best;
    std::vector<double> used(lots, 0);
    try_all(question, 0, used, 0, 0, best);
    const auto found = assign_lots(question);
    ASSERT_TRUE(found.proven) << trial;
    std::size_t served = 0;
    std::vector<double> taken(lots, 0);
    for (std::size_t zone = 0; zone < zones; ++zone) {
      const auto& lot = found.lot_of_zone[zone];
      if (!lot) continue;
      ++served;
      ASSERT_TRUE(question.cost[*lot][zone].has_value());
      taken[*lot] += question.need[*lot][zone];
    }
    for (std::size_t lot = 0; lot < lots; ++lot) {
      const double there = question.available[lot].value_or(taken[lot]);
      EXPECT_LE(taken[lot], there + 1e-6) << trial;
    }
    EXPECT_EQ(served, best.served) << trial;
    EXPECT_NEAR(found.cost, best.cost, 1e-6) << trial;
  }
}

TEST(LotsToZones, NothingToAssign) {
  EXPECT_TRUE(assign_lots({}).proven);
  LotsToZones no_lot_serves{{{std::nullopt, std::nullopt}}, {{1, 1}}, {std::nullopt}};
  const auto found = assign_lots(no_lot_serves);
  EXPECT_TRUE(found.proven);
  EXPECT_FALSE(found.all_served());
}

}  // namespace
}  // namespace proofstone
