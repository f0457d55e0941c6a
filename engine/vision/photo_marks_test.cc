#include "engine/vision/photo_marks.h"

#include <gtest/gtest.h>

#include "engine/vision/drawn_boards.h"

namespace proofstone {
namespace {

TEST(MarksOnPhoto, AreFoundWithoutLookingForStones) {
  auto pixels = speckled_ground(1600, 1200, 5);
  draw_board(pixels, {{1000, 500}, 70, 5, 10}, 2);
  for (int y = 0; y < 1200; ++y) {
    for (int x = 0; x < 1600; ++x) {
      if (pixels_between({300, 800}, {x + 0.5, y + 0.5}) > 90) continue;
      std::uint8_t* pixel = &pixels.rgb[static_cast<std::size_t>(y * 1600 + x) * 3];
      pixel[0] = 210;
      pixel[1] = 190;
      pixel[2] = 50;
    }
  }
  const auto marks = marks_on_photo(pixels);
  ASSERT_EQ(marks.balls.size(), 1U);
  EXPECT_NEAR(marks.balls[0].middle.x, 300, 2);
  EXPECT_NEAR(marks.balls[0].radius, 90, 2.5);
  ASSERT_EQ(marks.boards.size(), 1U);
  EXPECT_EQ(marks.boards.begin()->first, 2);
  EXPECT_EQ(marks.boards.begin()->second.size(), 6U);
  EXPECT_TRUE(marks.cautions.empty());
}

TEST(MarksOnPhoto, SayWhereItIsDark) {
  auto pixels = speckled_ground(400, 300, 5);
  for (auto& value : pixels.rgb) value = static_cast<std::uint8_t>(value / 4);
  const auto marks = marks_on_photo(pixels);
  EXPECT_TRUE(marks.balls.empty());
  EXPECT_TRUE(marks.boards.empty());
  ASSERT_EQ(marks.cautions.size(), 1U);
  EXPECT_EQ(marks.cautions.front().substr(0, 17), "The photo is dark");
}

}  // namespace
}  // namespace proofstone
