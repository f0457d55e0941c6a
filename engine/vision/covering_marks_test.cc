#include "engine/vision/covering_marks.h"

#include <gtest/gtest.h>

#include "engine/vision/drawn_boards.h"
#include "engine/vision/drawn_photos.h"
#include "engine/vision/photo_gradation.h"

namespace proofstone {
namespace {

Photo with_ball(Photo photo, PhotoPoint middle, double radius) {
  // As large as the staff says, so that both agree: 2.5 mm to a pixel.
  photo.balls = {{middle, radius, Length::millimeters(5 * radius)}};
  return photo;
}

ScaleBoard board_at(PhotoPoint middle, double pixels_to_edge) {
  const BoardPose pose{middle, pixels_to_edge};
  ScaleBoard board{Length::millimeters(2.5 * pixels_to_edge), {}};
  for (int number = 0; number < markers_of_board; ++number) {
    board.markers.push_back(drawn_marker(pose, number));
  }
  return board;
}

TEST(CoveringMarks, CoverWhatLiesUnderABallOrASheet) {
  auto photo = with_ball(photo_with_staff(), {1000, 1000}, 100);
  photo.boards = {board_at({3000, 1000}, 100)};
  const CoveringMarks marks(photo);
  EXPECT_TRUE(marks.cover({1000, 1099}));
  EXPECT_FALSE(marks.cover({1000, 1101}));
  // Three markers and five gaps wide, two markers and four gaps high, with the paper round them.
  EXPECT_TRUE(marks.cover({3000 + 195, 1000}));
  EXPECT_FALSE(marks.cover({3000 + 205, 1000}));
  EXPECT_TRUE(marks.cover({3000, 1000 + 130}));
  EXPECT_FALSE(marks.cover({3000, 1000 + 145}));
  EXPECT_NEAR(marks.share_of(stone_outline({1100, 1000}, 60)), 0.5, 0.08);
  EXPECT_EQ(marks.share_of(stone_outline({1000, 1000}, 150)), 1);
  EXPECT_EQ(marks.share_of(stone_outline({2000, 2000}, 150)), 0);
  EXPECT_NEAR(marks.share_of(PhotoBox{1000, 950, 1200, 1050}), 0.49, 0.03);
  const double ball = std::numbers::pi * 100 * 100;
  const double sheet = 4.0 * 100 * 2.75 * 100;
  EXPECT_NEAR(marks.share_of_picture(), (ball + sheet) / (4000 * 3000), 0.0008);
}

TEST(CoveringMarks, OfAPhotoWithoutMarksCoverNothing) {
  const CoveringMarks marks(photo_with_staff());
  EXPECT_FALSE(marks.cover({10, 10}));
  EXPECT_EQ(marks.share_of(stone_outline({1000, 1000}, 150)), 0);
  EXPECT_EQ(marks.share_of(std::vector<PhotoPoint>{}), 0);
  EXPECT_EQ(marks.share_of_picture(), 0);
}

/// Outlines on a ball and on a board do not become stones, whatever their number.
TEST(CoveringMarks, AreNoStones) {
  auto photo = outlined_photo(1);
  const auto clear_of = [&photo](PhotoPoint middle, double away) {
    auto& outlines = photo.outlines;
    outlines.erase(std::remove_if(outlines.begin(), outlines.end(),
                                  [&](const auto& outline) {
                                    return pixels_between(outline.front(), middle) < away;
                                  }),
                   outlines.end());
  };
  clear_of({900, 900}, 300);
  clear_of({2900, 1500}, 600);
  const auto bare = photo;
  photo.outlines.push_back(stone_outline({900, 900}, 170));
  for (const auto& marker : board_at({2900, 1500}, 100).markers) {
    photo.outlines.emplace_back(marker.corners.begin(), marker.corners.end());
  }
  photo.pieces = {{160.0 * 160, {820, 820, 980, 980}}};
  const auto marked = [](Photo one) {
    one = with_ball(std::move(one), {900, 900}, 90);
    one.boards = {board_at({2900, 1500}, 100)};
    return gradation_from_photos(set_of({one}));
  };
  const auto with = marked(photo);
  const auto without = marked(bare);
  ASSERT_TRUE(with && without) << with.problems().front().sentence();
  EXPECT_EQ(with->measured.stones, without->measured.stones);
  EXPECT_EQ(with->sizes[1].size, without->sizes[1].size);
  const auto counted = gradation_from_photos(set_of({photo}));
  ASSERT_TRUE(counted);
  EXPECT_EQ(counted->measured.stones, without->measured.stones + 8);
}

}  // namespace
}  // namespace proofstone
