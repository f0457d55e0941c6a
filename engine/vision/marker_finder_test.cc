#include "engine/vision/marker_finder.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "engine/vision/drawn_boards.h"

namespace proofstone {
namespace {

double farthest_off(const SeenMarker& found, const SeenMarker& drawn) {
  double most = 0;
  for (std::size_t i = 0; i < 4; ++i) {
    most = std::max(most, pixels_between(found.corners[i], drawn.corners[i]));
  }
  return most;
}

TEST(MarkerFinder, FindsEveryMarkerWhereItIsHoweverItLies) {
  const BoardPose poses[] = {{{400, 300}, 60, 0, 0},    {{400, 300}, 60, 90, 0},
                             {{400, 300}, 45, 37, 0},   {{380, 310}, 100, 200, 0},
                             {{400, 300}, 30, 12, 20},  {{400, 300}, 90, -60, 45},
                             {{420, 290}, 140, 10, 30}, {{400, 300}, 24, 3, 0}};
  for (const auto& pose : poses) {
    auto photo = speckled_ground(800, 600, 3);
    draw_board(photo, pose, 2);
    const auto found = find_markers(photo);
    ASSERT_EQ(found.size(), static_cast<std::size_t>(markers_of_board))
        << pose.pixels_to_edge << " px turned " << pose.turned_degrees << " tilted "
        << pose.tilted_degrees;
    for (std::size_t i = 0; i < found.size(); ++i) {
      EXPECT_EQ(found[i].number, markers_of_board + static_cast<int>(i));
      EXPECT_LT(farthest_off(found[i], drawn_marker(pose, found[i].number)), 0.4)
          << pose.pixels_to_edge << " px turned " << pose.turned_degrees << " tilted "
          << pose.tilted_degrees << ", marker " << found[i].number;
    }
  }
}

TEST(MarkerFinder, FindsOneThatIsLargerThanTheNeighbourhoodItIsComparedWith) {
  const BoardPose pose{{1000, 750}, 500, 4, 5, 20'000};
  auto photo = speckled_ground(2000, 1500, 5);
  draw_board(photo, pose, 1);
  const auto found = find_markers(photo);
  ASSERT_FALSE(found.empty());
  for (const auto& marker : found) {
    EXPECT_LT(farthest_off(marker, drawn_marker(pose, marker.number)), 0.4);
  }
}

TEST(MarkerFinder, FindsNothingWhereNothingIs) {
  EXPECT_TRUE(find_markers(speckled_ground(640, 480, 11)).empty());
  EXPECT_TRUE(find_markers({}).empty());
  EXPECT_TRUE(find_markers({10, 10, std::vector<std::uint8_t>(300, 90)}).empty());
  EXPECT_TRUE(find_markers({300, 200, std::vector<std::uint8_t>(180'000, 0)}).empty());
}

TEST(MarkerFinder, TheSameBoardTwiceIsNone) {
  auto photo = speckled_ground(800, 600, 3);
  draw_board(photo, {{200, 300}, 40}, 1);
  draw_board(photo, {{600, 300}, 40}, 1);
  EXPECT_TRUE(find_markers(photo).empty());
}

TEST(MarkerFinder, PixelsThatDoNotFillThePictureAreNoPicture) {
  EXPECT_TRUE(find_markers({400, 400, std::vector<std::uint8_t>(12, 0)}).empty());
  EXPECT_TRUE(find_markers({-5, 400, {}}).empty());
}

}  // namespace
}  // namespace proofstone
