#include "engine/vision/marker_code.h"

#include <gtest/gtest.h>

#include <bit>

#include "engine/evidence/mixed_bits.h"

namespace proofstone {
namespace {

constexpr int n = marker_inner_modules;

/// The picture of a marker's inner modules after it is turned clockwise.
MarkerBits turned_clockwise(MarkerBits bits) {
  MarkerBits turned = 0;
  for (int row = 0; row < n; ++row) {
    for (int column = 0; column < n; ++column) {
      const int from_column = row;
      const int from_row = n - 1 - column;
      const int from = n * n - 1 - (from_row * n + from_column);
      if ((bits >> from & 1) != 0) turned |= MarkerBits{1} << (n * n - 1 - (row * n + column));
    }
  }
  return turned;
}

TEST(MarkerCode, AnyTwoDifferInElevenModulesHoweverTurned) {
  for (int one = 0; one < known_markers; ++one) {
    for (int other = one; other < known_markers; ++other) {
      MarkerBits turned = marker_bits(other);
      for (int turns = 0; turns < 4; ++turns, turned = turned_clockwise(turned)) {
        if (one == other && turns == 0) continue;
        EXPECT_GE(std::popcount(marker_bits(one) ^ turned), 11) << one << " " << other;
      }
    }
  }
}

TEST(MarkerCode, IsReadInEveryTurnAndWithTwoModulesMisread) {
  for (int number = 0; number < known_markers; ++number) {
    MarkerBits turned = marker_bits(number);
    for (int turns = 0; turns < 4; ++turns, turned = turned_clockwise(turned)) {
      const auto read = read_marker(turned ^ (MarkerBits{1} << (number % 36)) ^
                                    (MarkerBits{1} << ((number + 11) % 36)));
      ASSERT_TRUE(read) << number << " turned " << turns;
      EXPECT_EQ(read->number, number);
      EXPECT_EQ(read->quarter_turns, turns);
    }
  }
}

TEST(MarkerCode, WhatIsNoMarkerIsNotRead) {
  EXPECT_FALSE(read_marker(0));
  EXPECT_FALSE(read_marker((MarkerBits{1} << 36) - 1));
  int read = 0;
  for (std::uint64_t i = 0; i < 20'000; ++i) {
    if (read_marker(mixed_bits(i) >> 28)) ++read;
  }
  // 24 markers in 4 turns with up to 2 of 36 misread: 64,032 of 6.9·10^10 patterns.
  EXPECT_EQ(read, 0);
}

TEST(MarkerCode, HasADarkRim) {
  for (int i = 0; i < marker_modules; ++i) {
    EXPECT_TRUE(marker_module_is_dark(5, i, 0));
    EXPECT_TRUE(marker_module_is_dark(5, 0, i));
    EXPECT_TRUE(marker_module_is_dark(5, i, marker_modules - 1));
    EXPECT_TRUE(marker_module_is_dark(5, marker_modules - 1, i));
  }
}

}  // namespace
}  // namespace proofstone
