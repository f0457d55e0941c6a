// The markers are those of the open family, and they are found where its own library finds them.
#include <apriltag/apriltag.h>
#include <apriltag/tag36h11.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <memory>

#include "engine/vision/drawn_boards.h"
#include "engine/vision/grey_picture.h"
#include "engine/vision/marker_finder.h"

namespace proofstone {
namespace {

/// What the reference library finds: by number, the corners of each marker.
std::map<int, std::array<PhotoPoint, 4>> found_by_library(const PhotoPixels& photo) {
  auto grey = grey_of(photo);
  image_u8_t image = {grey.width, grey.height, grey.width, grey.grey.data()};
  const std::unique_ptr<apriltag_family_t, decltype(&tag36h11_destroy)> family(tag36h11_create(),
                                                                               tag36h11_destroy);
  const std::unique_ptr<apriltag_detector_t, decltype(&apriltag_detector_destroy)> detector(
      apriltag_detector_create(), apriltag_detector_destroy);
  apriltag_detector_add_family(detector.get(), family.get());
  detector->quad_decimate = 1;
  const std::unique_ptr<zarray_t, decltype(&apriltag_detections_destroy)> found(
      apriltag_detector_detect(detector.get(), &image), apriltag_detections_destroy);
  std::map<int, std::array<PhotoPoint, 4>> markers;
  for (int i = 0; i < zarray_size(found.get()); ++i) {
    apriltag_detection_t* one = nullptr;
    zarray_get(found.get(), i, &one);
    // Its corners go from the lower left anticlockwise; ours from the upper left clockwise.
    for (std::size_t k = 0; k < 4; ++k) markers[one->id][k] = {one->p[3 - k][0], one->p[3 - k][1]};
  }
  return markers;
}

TEST(MarkerReference, TheLibraryReadsOurBoardsAndFindsTheSamePlaces) {
  const BoardPose poses[] = {
      {{400, 300}, 60, 0, 0}, {{400, 300}, 45, 37, 10}, {{400, 300}, 90, -60, 40}};
  for (int board = 1; board <= known_markers / markers_of_board; ++board) {
    for (const auto& pose : poses) {
      auto photo = speckled_ground(800, 600, 3);
      draw_board(photo, pose, board);
      const auto theirs = found_by_library(photo);
      const auto ours = find_markers(photo);
      ASSERT_EQ(theirs.size(), static_cast<std::size_t>(markers_of_board));
      ASSERT_EQ(ours.size(), theirs.size());
      for (const auto& marker : ours) {
        const auto at = theirs.find(marker.number);
        ASSERT_NE(at, theirs.end()) << marker.number;
        for (std::size_t i = 0; i < 4; ++i) {
          EXPECT_LT(pixels_between(marker.corners[i], at->second[i]), 0.8)
              << "board " << board << ", marker " << marker.number << ", corner " << i;
        }
      }
    }
  }
}

}  // namespace
}  // namespace proofstone
