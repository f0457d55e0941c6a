#include "engine/vision/marker_board.h"

#include <gtest/gtest.h>

#include <limits>

#include "engine/vision/drawn_boards.h"
#include "engine/vision/drawn_photos.h"
#include "engine/vision/marker_finder.h"
#include "engine/vision/photo_scale.h"

namespace proofstone {
namespace {

ScaleBoard board_in(const BoardPose& pose, int first, int last) {
  ScaleBoard board{Length::millimeters(100), {}};
  for (int number = first; number <= last; ++number) {
    board.markers.push_back(drawn_marker(pose, number));
  }
  return board;
}

Expected<BoardReading> reading_of(const ScaleBoard& board) {
  Steps steps;
  return read_board(board, "photo 1, board 1", steps);
}

TEST(MarkerBoard, TellsTheScaleHoweverItIsTilted) {
  for (const double tilt : {0.0, 15.0, 30.0, 50.0}) {
    // From far off, so that perspective does not add to what the tilt does.
    const BoardPose pose{{2000, 1500}, 80, 25, tilt, 1e6};
    const auto reading = reading_of(board_in(pose, 0, 5));
    ASSERT_TRUE(reading) << tilt;
    EXPECT_NEAR(reading->pixel.millimeters(), 100.0 / 80, 0.001) << tilt;
    EXPECT_NEAR(reading->oblique.degrees(), tilt, 0.2);
    EXPECT_NEAR(reading->middle.x, 2000, 0.5);
    EXPECT_NEAR(reading->middle.y, 1500, 0.5);
  }
}

TEST(MarkerBoard, OneMarkerAloneTellsItToo) {
  const BoardPose pose{{2000, 1500}, 80, 25, 20, 1e6};
  const auto reading = reading_of(board_in(pose, 4, 4));
  ASSERT_TRUE(reading);
  EXPECT_NEAR(reading->pixel.millimeters(), 100.0 / 80, 0.001);
}

TEST(MarkerBoard, TwiceTheEdgeIsTwiceTheScale) {
  const BoardPose pose{{2000, 1500}, 80, 25, 20};
  auto board = board_in(pose, 0, 5);
  const auto once = reading_of(board);
  board.edge = Length::millimeters(200);
  const auto twice = reading_of(board);
  ASSERT_TRUE(once && twice);
  EXPECT_NEAR(twice->pixel.meters(), 2 * once->pixel.meters(), 1e-12);
}

TEST(MarkerBoard, ThatIsBentIsRefused) {
  auto board = board_in({{2000, 1500}, 80}, 0, 5);
  for (auto& corner : board.markers[1].corners) corner.y += 14;
  const auto reading = reading_of(board);
  ASSERT_FALSE(reading);
  EXPECT_EQ(reading.problems().front().code, "board-not-flat");
}

TEST(MarkerBoard, IsFoundReadAndGivesThePhotoItsScale) {
  const BoardPose pose{{400, 300}, 60, 8, 10};
  auto pixels = speckled_ground(800, 600, 3);
  draw_board(pixels, pose, 1);
  Photo photo;
  photo.size = {800, 600};
  photo.boards = {{Length::millimeters(65), find_markers(pixels)}};
  photo.scale_error = Dimensionless::number(0.04);
  Steps steps;
  const auto scale = photo_scale(photo, "photo 1", steps);
  ASSERT_TRUE(scale);
  EXPECT_NEAR(scale->pixel_at(300).millimeters(), 65.0 / 60, 0.01);
  EXPECT_NEAR(scale->error(), 0.04, 1e-12);
}

TEST(MarkerBoard, WithoutAStatedErrorGivesNone) {
  auto photo = photo_with_staff();
  photo.staffs.clear();
  photo.scale_error.reset();
  photo.boards = {board_in({{2000, 1500}, 80}, 0, 5)};
  Steps steps;
  const auto scale = photo_scale(photo, "photo 1", steps);
  ASSERT_FALSE(scale);
  EXPECT_EQ(scale.problems().front().code, "no-scale-error");
}

TEST(MarkerBoard, ThatContradictsTheStaffIsSaid) {
  auto photo = photo_with_staff();
  // Forty pixels to 100 mm are what the staff shows; half as many say the opposite.
  photo.boards = {board_in({{2000, 1500}, 20}, 0, 5)};
  Steps steps;
  const auto scale = photo_scale(photo, "photo 1", steps);
  ASSERT_FALSE(scale);
  EXPECT_EQ(scale.problems().front().code, "scales-disagree");
}

TEST(MarkerBoard, BadInputIsNamed) {
  const PictureSize picture{4000, 3000};
  const BoardPose pose{{2000, 1500}, 80};
  const auto count = [&](const ScaleBoard& board) {
    return problems_of_board(board, picture, "photo 1, board 1").size();
  };
  EXPECT_EQ(count(board_in(pose, 0, 5)), 0U);
  EXPECT_EQ(count({Length::millimeters(100), {}}), 1U);

  auto twice = board_in(pose, 0, 1);
  twice.markers[1] = twice.markers[0];
  EXPECT_EQ(count(twice), 1U);

  auto unknown = board_in(pose, 0, 0);
  unknown.markers[0].number = 24;
  EXPECT_EQ(count(unknown), 1U);
  unknown.markers[0].number = -1;
  EXPECT_GE(count(unknown), 1U);

  EXPECT_EQ(count(board_in(pose, 5, 6)), 1U);  // of two boards

  auto mirrored = board_in(pose, 0, 0);
  std::swap(mirrored.markers[0].corners[1], mirrored.markers[0].corners[3]);
  EXPECT_EQ(count(mirrored), 1U);

  auto nowhere = board_in(pose, 0, 0);
  nowhere.markers[0].corners[2].x = std::numeric_limits<double>::quiet_NaN();
  EXPECT_EQ(count(nowhere), 1U);

  auto tiny = board_in(pose, 0, 0);
  tiny.edge = Length::millimeters(1);
  EXPECT_EQ(count(tiny), 1U);
}

}  // namespace
}  // namespace proofstone
