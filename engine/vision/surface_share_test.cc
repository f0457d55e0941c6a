#include "engine/vision/surface_share.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "engine/vision/drawn_photos.h"

namespace proofstone {
namespace {

TEST(SurfaceShare, CountsEachStoneByHalfAtItsOwnSize) {
  const SurfaceShare share(
      {{Length::meters(0.4), 3, 0}, {Length::meters(0.1), 1, 0}, {Length::meters(0.2), 4, 1}});
  EXPECT_DOUBLE_EQ(share.percent_smaller(Length::meters(0.1)), 6.25);
  EXPECT_DOUBLE_EQ(share.percent_smaller(Length::meters(0.2)), 37.5);
  EXPECT_DOUBLE_EQ(share.percent_smaller(Length::meters(0.4)), 81.25);
  EXPECT_EQ(share.percent_smaller(Length::meters(0.09)), 0);
  EXPECT_EQ(share.percent_smaller(Length::meters(0.41)), 100);
  // Halfway in percent is halfway in the logarithm.
  EXPECT_NEAR(share.size_at((37.5 + 81.25) / 2).meters(), std::sqrt(0.2 * 0.4), 1e-12);
  EXPECT_NEAR(share.percent_smaller(Length::meters(std::sqrt(0.2 * 0.4))), (37.5 + 81.25) / 2,
              1e-9);
  EXPECT_DOUBLE_EQ(share.size_at(1).meters(), 0.1);
  EXPECT_DOUBLE_EQ(share.size_at(99).meters(), 0.4);
}

/// Stones that lie by themselves: the error of the median is that of n independent draws, √(p·q/n)
/// over the density at the median.
TEST(BlockBootstrap, FindsTheErrorOfIndependentStones) {
  constexpr int stones = 240;
  constexpr double deviation = 0.32;
  double sum = 0;
  constexpr int samples = 20;
  for (std::uint64_t sample = 0; sample < samples; ++sample) {
    std::vector<SeenStone> seen;
    for (std::uint64_t i = 0; i < stones; ++i) {
      seen.push_back({Length::meters(lognormal(sample * 1000 + i, 0.3, deviation)), 1,
                      static_cast<std::size_t>(i % 24)});
    }
    sum += block_bootstrap(SurfaceShare(seen), {50}).errors().front();
  }
  const double expected = 0.5 / std::sqrt(stones) * deviation * std::sqrt(2 * std::numbers::pi);
  EXPECT_NEAR(sum / samples, expected, 0.12 * expected);
}

/// Stones of a block that are all alike tell no more than one.
TEST(BlockBootstrap, SeesThatNeighboursAreAlike) {
  std::vector<SeenStone> apart;
  std::vector<SeenStone> alike;
  for (std::uint64_t i = 0; i < 240; ++i) {
    apart.push_back({Length::meters(lognormal(i, 0.3, 0.32)), 1, static_cast<std::size_t>(i % 24)});
    alike.push_back(
        {Length::meters(lognormal(i % 24, 0.3, 0.32)), 1, static_cast<std::size_t>(i % 24)});
  }
  const auto error = [](const std::vector<SeenStone>& stones) {
    return block_bootstrap(SurfaceShare(stones), {50}).errors().front();
  };
  EXPECT_GT(error(alike), 2 * error(apart));
}

TEST(BlockBootstrap, IsTheSameEachTime) {
  std::vector<SeenStone> stones;
  for (std::uint64_t i = 0; i < 100; ++i) {
    stones.push_back(
        {Length::meters(lognormal(i, 0.3, 0.5)), part_of_one(i), static_cast<std::size_t>(i % 12)});
  }
  const SurfaceShare share(stones);
  EXPECT_EQ(block_bootstrap(share, {15, 50, 85}).log_sizes,
            block_bootstrap(share, {15, 50, 85}).log_sizes);
}

}  // namespace
}  // namespace proofstone
