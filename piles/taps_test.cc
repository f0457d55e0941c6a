#include "piles/taps.h"

#include <gtest/gtest.h>

#include <cmath>

#include "piles/pile.h"
#include "piles/silhouette.h"

namespace proofstone::piles {
namespace {

/// A picture of 120 × 90 pixels with one stone of 40 × 20 about its middle.
TrialPicture one_stone(double alone) {
  TrialPicture picture;
  picture.stones = {120, 90, 1, std::vector<int>(120 * 90, 0)};
  for (int y = 35; y < 55; ++y) {
    for (int x = 40; x < 80; ++x) picture.stones.stone[static_cast<std::size_t>(y * 120 + x)] = 1;
  }
  picture.alone = {alone};
  return picture;
}

TEST(Taps, MeetAStoneUnderEachNodeThatLiesOnIt) {
  const auto taps = seen_taps(one_stone(1600), close_grid, 1);
  // Nodes lie 10 pixels apart from 5 on: four columns and two rows of them on the stone.
  ASSERT_EQ(taps.size(), 8U);
  for (const auto& tap : taps) {
    EXPECT_NEAR(tap.along, 40, 6);
    EXPECT_NEAR(tap.across, 20, 3);
    EXPECT_NEAR(tap.shows, 0.5, 1e-9);
  }
  EXPECT_NE(taps[0].along, taps[1].along);
}

TEST(Taps, HiddenStonesAreSaidToBeSoAndAxesStayOnThePicture) {
  const std::vector<SeenTap> taps{{{5, 45}, 40, 20, 0.4}, {{60, 88}, 40, 20, 0.3}};
  const auto tapped = tapped_stones(taps, 0.35, {120, 90});
  ASSERT_EQ(tapped.size(), 2U);
  EXPECT_FALSE(tapped[0].mostly_hidden);
  EXPECT_TRUE(tapped[1].mostly_hidden);
  EXPECT_EQ(tapped[0].long_from.x, 0);
  EXPECT_EQ(tapped[0].long_to.x, 40);
  EXPECT_EQ(tapped[1].short_from.y, 70);
  EXPECT_EQ(tapped[1].short_to.y, 90);
}

TEST(Silhouette, OfAStoneIsBetweenItsSmallestAndItsLargestFace) {
  auto gradation = AskedGradation::of_spread("class-type", Length::inches(12));
  const auto stones = make_stones(*gradation, RockMix::quarried, 20, 7);
  const btTransform here(btQuaternion::getIdentity(), btVector3(0, 0, 0));
  const Camera camera = Camera::looking({0, 0, 50}, {0, 0, 0}, {0, 1, 0}, 640, 480);
  const float pixel = 50 / camera.focal_pixels;
  for (const auto& stone : stones) {
    const auto& [a, b, c, volume, centroid] = stone.measure;
    const double area = silhouette_area(stone, here, camera) * std::pow(pixel, 2);
    EXPECT_LT(area, 1.05 * a * b);
    EXPECT_GT(area, 0.95 * volume / a);
    EXPECT_EQ(silhouette_area(stone, btTransform(btQuaternion::getIdentity(), {0, 0, 60}), camera),
              0);
  }
}

}  // namespace
}  // namespace proofstone::piles
