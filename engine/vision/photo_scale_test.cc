#include "engine/vision/photo_scale.h"

#include <gtest/gtest.h>

#include <cmath>

#include "engine/vision/drawn_photos.h"

namespace proofstone {
namespace {

std::string code_of(const Photo& photo) {
  Steps steps;
  const auto scale = photo_scale(photo, "photo 1", steps);
  return scale ? "" : scale.problems().front().code;
}

Photo photo_with_balls(double lower_radius, double upper_radius, PhotoView view) {
  Photo photo;
  photo.size = {1024, 768};
  photo.view = view;
  photo.balls = {{{300, 600}, lower_radius, Length::inches(12)},
                 {{700, 200}, upper_radius, Length::inches(12)}};
  return photo;
}

TEST(PhotoScale, OfAStaffIsItsLengthOverItsPixels) {
  Steps steps;
  const auto scale = photo_scale(photo_with_staff(), "photo 1", steps);
  ASSERT_TRUE(scale);
  EXPECT_NEAR(scale->pixel_at(0).millimeters(), 2.5, 1e-12);
  EXPECT_NEAR(scale->pixel_at(3000).millimeters(), 2.5, 1e-12);
  EXPECT_DOUBLE_EQ(scale->error(), 0.04);
  EXPECT_TRUE(scale->error_stated());
}

TEST(PhotoScale, SquareToTheFaceIsTheMeanOfBothBallsSetBack) {
  Steps steps;
  const auto photo = photo_with_balls(50, 54, PhotoView::straight_on);
  const auto scale = photo_scale(photo, "photo 1", steps);
  ASSERT_TRUE(scale);
  const double focal = focal_length_in_pixels(photo.size, Length::millimeters(26));
  EXPECT_NEAR(focal, 26 / 43.2666153 * 1280, 1e-4);
  const double back = 1.1 * 0.3048 / (2 * focal * std::cos(6 * std::numbers::pi / 180));
  // Both lengths of a pixel are averaged through their inverses' mean only to second order.
  const double mean = (0.3048 / 100 + 0.3048 / 108) / 2 + back;
  EXPECT_NEAR(scale->pixel_at(384).meters(), mean, 1e-12);
  EXPECT_GT(scale->error(), 0.06);
  EXPECT_LT(scale->error(), 0.063);
}

/// A plane of rock that leans away, seen by a camera that is known: the balls' line gives every
/// height its scale.
TEST(PhotoScale, ObliqueIsInverseToALineDownThePicture) {
  const PictureSize size{1024, 768};
  const double focal = focal_length_in_pixels(size, Length::millimeters(26));
  const double tilt = 44 * std::numbers::pi / 180;
  const auto depth_at = [&](double y) { return 5.0 / (1 + (y - 384) / focal * std::tan(tilt)); };
  const auto radius_at = [&](double y) {
    return focal * 0.3048 / 2 / (depth_at(y) - 1.1 * 0.1524 / std::cos(tilt));
  };
  Steps steps;
  const auto scale = photo_scale(
      photo_with_balls(radius_at(600), radius_at(200), PhotoView::oblique), "photo 1", steps);
  ASSERT_TRUE(scale);
  for (const double y : {50.0, 200.0, 384.0, 600.0, 760.0}) {
    EXPECT_NEAR(scale->pixel_at(y).meters(), depth_at(y) / focal, 1e-9) << y;
  }
}

TEST(PhotoScale, RefusesWhatCannotBeOne) {
  auto photo = photo_with_staff();
  photo.scale_error.reset();
  EXPECT_EQ(code_of(photo), "no-scale-error");
  photo.staffs.clear();
  EXPECT_EQ(code_of(photo), "no-scale");
  EXPECT_EQ(code_of(photo_with_balls(50, 54, PhotoView::straight_on)), "");
  EXPECT_EQ(code_of(photo_with_balls(50, 75, PhotoView::straight_on)), "scales-disagree");
  EXPECT_EQ(code_of(photo_with_balls(50, 75, PhotoView::oblique)), "scales-disagree");

  auto one_ball = photo_with_balls(60, 50, PhotoView::oblique);
  one_ball.balls.pop_back();
  EXPECT_EQ(code_of(one_ball), "one-height");
  one_ball.view = PhotoView::straight_on;
  EXPECT_EQ(code_of(one_ball), "");
  one_ball.balls[0].middle.x = 2000;
  EXPECT_EQ(code_of(one_ball), "no-ball");
  one_ball.balls[0] = {{300, 300}, std::nan(""), Length::inches(12)};
  EXPECT_EQ(code_of(one_ball), "no-ball");
  one_ball.balls[0] = {{300, 300}, 50, Length::meters(12)};
  EXPECT_EQ(code_of(one_ball), "no-ball");

  auto up_the_face = photo_with_balls(60, 50, PhotoView::oblique);
  up_the_face.staffs = {{{500, 100}, {510, 700}, Length::meters(2)}};
  EXPECT_EQ(code_of(up_the_face), "foreshortened");

  auto grazing = photo_with_staff();
  grazing.off_square = Angle::degrees(40);
  EXPECT_EQ(code_of(grazing), "not-straight-on");
  grazing.off_square = Angle::degrees(89);
  EXPECT_EQ(code_of(grazing), "off-square");
  grazing.off_square.reset();
  grazing.focal_length = Length::meters(2);
  EXPECT_EQ(code_of(grazing), "no-camera");
  grazing.focal_length.reset();
  grazing.size.width = std::nan("");
  EXPECT_EQ(code_of(grazing), "no-picture");
}

TEST(PhotoScale, ABallAndAStaffThatDisagreeAreNoScale) {
  auto photo = photo_with_balls(50, 52, PhotoView::straight_on);
  photo.staffs = {{{100, 700}, {600, 700}, Length::meters(1)}};
  EXPECT_EQ(code_of(photo), "scales-disagree");
  photo.staffs[0].length = Length::meters(1.65);
  EXPECT_EQ(code_of(photo), "");
}

}  // namespace
}  // namespace proofstone
