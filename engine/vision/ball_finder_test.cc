#include "engine/vision/ball_finder.h"

#include <gtest/gtest.h>

#include "engine/vision/drawn_photos.h"

namespace proofstone {
namespace {

/// Grey rock of many tones.
PhotoPixels grey_rock(int width, int height) {
  PhotoPixels photo{width, height, {}};
  for (int i = 0; i < width * height; ++i) {
    const auto tone =
        static_cast<std::uint8_t>(70 + 100 * part_of_one(static_cast<std::size_t>(i)));
    photo.rgb.insert(photo.rgb.end(), {tone, tone, static_cast<std::uint8_t>(tone - 5)});
  }
  return photo;
}

template <class Inside>
void paint(PhotoPixels& photo, std::uint8_t red, std::uint8_t green, std::uint8_t blue,
           Inside inside) {
  for (int y = 0; y < photo.height; ++y) {
    for (int x = 0; x < photo.width; ++x) {
      if (!inside(x + 0.5, y + 0.5)) continue;
      std::uint8_t* pixel = &photo.rgb[static_cast<std::size_t>(y * photo.width + x) * 3];
      pixel[0] = red;
      pixel[1] = green;
      pixel[2] = blue;
    }
  }
}

void paint_ball(PhotoPixels& photo, PhotoPoint middle, double radius) {
  paint(photo, 200, 190, 60,
        [&](double x, double y) { return pixels_between(middle, {x, y}) < radius; });
}

TEST(FindBalls, TellsWhereTheyAreAndHowLarge) {
  auto photo = grey_rock(400, 300);
  paint_ball(photo, {120, 90}, 30);
  paint_ball(photo, {300, 220}, 42);
  const auto balls = find_balls(photo);
  ASSERT_EQ(balls.size(), 2U);
  EXPECT_NEAR(balls[0].middle.x, 300, 0.5);
  EXPECT_NEAR(balls[0].middle.y, 220, 0.5);
  EXPECT_NEAR(balls[0].radius, 42, 0.7);
  EXPECT_NEAR(balls[1].middle.x, 120, 0.5);
  EXPECT_NEAR(balls[1].radius, 30, 0.7);
}

TEST(FindBalls, GoesOnBehindAStoneAndBeyondTheEdgeOfThePicture) {
  auto photo = grey_rock(400, 300);
  paint_ball(photo, {200, 12}, 50);
  paint_ball(photo, {100, 180}, 50);
  paint(photo, 120, 120, 115, [](double x, double y) { return x > 132 && x < 180 && y > 150; });
  const auto balls = find_balls(photo);
  ASSERT_EQ(balls.size(), 2U);
  for (const auto& ball : balls) {
    const bool upper = ball.middle.y < 100;
    EXPECT_NEAR(ball.middle.x, upper ? 200 : 100, 1.5);
    EXPECT_NEAR(ball.middle.y, upper ? 12 : 180, 1.5);
    EXPECT_NEAR(ball.radius, 50, 1.5);
  }
}

TEST(FindBalls, TakesNothingElseForOne) {
  EXPECT_TRUE(find_balls({}).empty());
  EXPECT_TRUE(find_balls(grey_rock(400, 300)).empty());
  auto photo = grey_rock(400, 300);
  paint(photo, 200, 60, 40, [](double x, double y) {  // a tarp
    return x > 40 && x < 120 && y > 40 && y < 90;
  });
  paint(photo, 40, 160, 60, [](double x, double y) {  // a plank
    return x > 150 && x < 390 && y > 200 && y < 215;
  });
  paint_ball(photo, {300, 100}, 5);
  EXPECT_TRUE(find_balls(photo).empty());
  // All of one colour: that is the rock's.
  auto plain = grey_rock(400, 300);
  paint_ball(plain, {200, 150}, 1000);
  EXPECT_TRUE(find_balls(plain).empty());
}

}  // namespace
}  // namespace proofstone
