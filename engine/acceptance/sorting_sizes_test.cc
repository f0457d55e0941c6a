#include "engine/acceptance/sorting_sizes.h"

#include <gtest/gtest.h>

#include <cmath>

#include "engine/rock/rock_class.h"

namespace proofstone {
namespace {

TEST(SortingSizes, EnfoldEveryClassInRoundSteps) {
  for (const auto& rock_class : class_catalog()) {
    for (const auto units : {UnitSystem::us_customary, UnitSystem::si}) {
      const auto sizes = sorting_sizes(rock_class.band, units);
      ASSERT_GE(sizes.size(), 2U) << rock_class.id;
      EXPECT_LE(sizes.size(), 14U) << rock_class.id;
      for (std::size_t i = 1; i < sizes.size(); ++i) EXPECT_LT(sizes[i - 1], sizes[i]);
      for (const auto& condition : rock_class.band.conditions()) {
        EXPECT_LT(sizes.front(), condition.size) << rock_class.id;
        EXPECT_GT(sizes.back(), condition.size) << rock_class.id;
      }
    }
  }
}

TEST(SortingSizes, AreInchesInUsAndMillimetresInSi) {
  const auto* rock_class = find_rock_class("fhwa-3");
  ASSERT_NE(rock_class, nullptr);
  for (const auto size : sorting_sizes(rock_class->band, UnitSystem::us_customary)) {
    EXPECT_NEAR(size.inches(), std::round(size.inches()), 1e-9);
  }
  for (const auto size : sorting_sizes(rock_class->band, UnitSystem::si)) {
    EXPECT_NEAR(size.millimeters() / 25, std::round(size.millimeters() / 25), 1e-9);
  }
}

}  // namespace
}  // namespace proofstone
