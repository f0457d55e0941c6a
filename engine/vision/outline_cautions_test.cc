#include "engine/vision/outline_cautions.h"

#include <gtest/gtest.h>

#include <cmath>

#include "engine/vision/drawn_photos.h"

namespace proofstone {
namespace {

/// Speckles as wide as `wide` pixels, up to a luma of `brightest`.
PhotoPixels speckles(int wide, int brightest) {
  PhotoPixels photo{120, 90, {}};
  for (int y = 0; y < photo.height; ++y) {
    for (int x = 0; x < photo.width; ++x) {
      const double wave = std::sin(3.1 * x / wide) * std::cos(2.7 * y / wide);
      const auto tone = static_cast<std::uint8_t>(brightest * (1 + wave) / 2);
      photo.rgb.insert(photo.rgb.end(), {tone, tone, tone});
    }
  }
  return photo;
}

TEST(LightOf, TellsDarkFromBrightAndSharpFromBlurred) {
  const auto sharp = light_of(speckles(2, 200));
  const auto soft = light_of(speckles(20, 200));
  EXPECT_GT(sharp.sharpness, 0.3);
  EXPECT_LT(soft.sharpness, 0.06);
  EXPECT_GT(sharp.brightest, 120);
  EXPECT_LT(sharp.darkest, 80);
  EXPECT_LT(light_of(speckles(2, 60)).brightest, 60);
  const auto nothing = light_of({});
  EXPECT_EQ(nothing.brightest, 0);
  EXPECT_EQ(nothing.sharpness, 0);
}

TEST(CautionsOfOutlines, AreGivenWhereAPhotoCouldBeBetter) {
  const LightOfPhoto good{30, 170, 0.35};
  EXPECT_TRUE(cautions_of_outlines(good, {60, 13}).empty());
  const auto only = [](const LightOfPhoto& light, const StonesInView& stones) {
    const auto cautions = cautions_of_outlines(light, stones);
    return cautions.size() == 1 ? cautions.front().substr(0, 19) : "";
  };
  EXPECT_EQ(only({5, 60, 0.35}, {60, 13}), "The photo is dark: ");
  EXPECT_EQ(only({30, 170, 0.03}, {60, 13}), "The photo is blurre");
  EXPECT_EQ(only(good, {25, 30}), "Half of the rock se");
  EXPECT_EQ(only(good, {400, 5}), "The photo is only 5");
  EXPECT_EQ(cautions_of_outlines({1, 2, 0}, {1, 1}).size(), 4U);
}

}  // namespace
}  // namespace proofstone
