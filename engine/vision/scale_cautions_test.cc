#include "engine/vision/scale_cautions.h"

#include <gtest/gtest.h>

#include <cmath>

#include "engine/vision/drawn_boards.h"
#include "engine/vision/drawn_photos.h"
#include "engine/vision/photo_scale.h"

namespace proofstone {
namespace {

bool says(const std::vector<std::string>& cautions, const std::string& part) {
  return std::any_of(cautions.begin(), cautions.end(), [&part](const std::string& caution) {
    return caution.find(part) != std::string::npos;
  });
}

/// Two balls of 12 inches on a plane that leans away by an angle, one high and one low.
Photo balls_on_leaning_plane(double degrees) {
  Photo photo;
  photo.size = {4000, 3000};
  const double focal = focal_length_in_pixels(photo.size, Length::millimeters(26));
  const double lean = degrees * std::numbers::pi / 180;
  for (const double along : {-1.2, 1.2}) {  // metres down the plane from its middle, 5 m away
    const double depth = 5 - along * std::sin(lean);
    const double radius = focal * 0.1524 / depth;
    photo.balls.push_back(
        {{2000, 1500 + focal * along * std::cos(lean) / depth}, radius, Length::inches(12)});
  }
  return photo;
}

TEST(CautionsOfScale, TellAnObliqueViewByTwoBalls) {
  EXPECT_TRUE(cautions_of_scale(balls_on_leaning_plane(0), 1).empty());
  EXPECT_TRUE(cautions_of_scale(balls_on_leaning_plane(25), 1).empty());
  const auto cautions = cautions_of_scale(balls_on_leaning_plane(45), 2);
  ASSERT_EQ(cautions.size(), 1U);
  EXPECT_TRUE(says(cautions, "By its balls photo 2 looks 45° off square")) << cautions.front();
  auto stated = balls_on_leaning_plane(45);
  stated.view = PhotoView::oblique;
  const auto known = cautions_of_scale(stated, 1);
  ASSERT_EQ(known.size(), 1U);
  EXPECT_TRUE(says(known, "is an oblique view: square"));
}

TEST(CautionsOfScale, BelieveNoAngleOfBallsSideBySideOrHardToRead) {
  auto side_by_side = balls_on_leaning_plane(45);
  side_by_side.balls[0].middle = {500, 1500};
  side_by_side.balls[1].middle = {3500, 1600};
  EXPECT_FALSE(says(cautions_of_scale(side_by_side, 1), "off square"));
  // The same from far away: a pixel of the radius is much of it.
  auto small = balls_on_leaning_plane(34);
  for (auto& ball : small.balls) {
    ball.radius /= 12;
    ball.diameter = ball.diameter / 12;
  }
  EXPECT_FALSE(says(cautions_of_scale(small, 1), "off square"));
}

TEST(CautionsOfScale, TellAnObliqueViewByABoard) {
  const auto with_board = [](double tilt) {
    Photo photo;
    photo.size = {4000, 3000};
    photo.boards = {{Length::millimeters(100), {}}};
    for (int number = 0; number < markers_of_board; ++number) {
      photo.boards[0].markers.push_back(drawn_marker({{2000, 1500}, 80, 10, tilt, 1e6}, number));
    }
    return cautions_of_scale(photo, 1);
  };
  EXPECT_TRUE(with_board(20).empty());
  EXPECT_TRUE(says(with_board(40), "By its marker board photo 1 looks 40° off square"));
}

TEST(CautionsOfScale, OfOneMarkInAnObliqueView) {
  auto photo = balls_on_leaning_plane(45);
  photo.view = PhotoView::oblique;
  photo.balls.pop_back();
  EXPECT_TRUE(says(cautions_of_scale(photo, 1), "with one mark"));
}

TEST(CautionsOfScale, OfMarksThatHideTheRock) {
  auto photo = photo_with_staff();
  photo.balls = {{{2000, 1500}, 700, Length::inches(12)}};
  EXPECT_TRUE(says(cautions_of_scale(photo, 1), "Balls and boards cover 13 % of photo 1"));
  photo.balls[0].radius = 300;
  EXPECT_FALSE(says(cautions_of_scale(photo, 1), "cover"));
}

TEST(CautionsOfScale, OfMarksThatDoNotLieOnRock) {
  Photo photo;
  photo.size = {4000, 3000};
  // Rock over the right half alone.
  for (int row = 0; row < 15; ++row) {
    for (int column = 10; column < 20; ++column) {
      photo.outlines.push_back(stone_outline({200.0 * column + 100, 200.0 * row + 100}, 195));
    }
  }
  photo.balls = {{{1000, 1500}, 150, Length::inches(12)}, {{3000, 1500}, 150, Length::inches(12)}};
  photo.staffs = {{{200, 400}, {1500, 400}, Length::meters(2)},
                  {{2200, 400}, {3800, 400}, Length::meters(2)}};
  const auto cautions = cautions_of_scale(photo, 1);
  EXPECT_EQ(cautions.size(), 2U);
  EXPECT_TRUE(says(cautions, "Round ball 1 of photo 1 little rock"));
  EXPECT_TRUE(says(cautions, "Round staff 1 of photo 1 little rock"));
  photo.outlines.clear();  // stones are tapped: nothing is known of where rock is
  EXPECT_TRUE(cautions_of_scale(photo, 1).empty());
}

}  // namespace
}  // namespace proofstone
