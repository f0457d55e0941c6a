#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <numbers>

#include "engine/evidence/mixed_bits.h"
#include "engine/vision/marker_board.h"
#include "engine/vision/marker_code.h"
#include "engine/vision/photo_pixels.h"

/// Photos with marker boards on them whose places are known, drawn for tests.
namespace proofstone {

/// A camera over the middle of the picture looks at a board: how large it appears, how it is turned
/// in the picture and how far it is tilted out of it.
struct BoardPose {
  PhotoPoint middle;
  double pixels_to_edge = 60;
  double turned_degrees = 0;
  double tilted_degrees = 0;
  double distance = 4000;  ///< of the board from the camera, in pixels of its focal length
};

/// Where a picture shows a place of the board, which is measured in edges from its middle.
inline PhotoPoint shown(const BoardPose& pose, PlanePoint place) {
  const double turn = pose.turned_degrees * std::numbers::pi / 180;
  const double tilt = pose.tilted_degrees * std::numbers::pi / 180;
  const double x = pose.pixels_to_edge * (place.x * std::cos(turn) - place.y * std::sin(turn));
  const double y = pose.pixels_to_edge * (place.x * std::sin(turn) + place.y * std::cos(turn));
  const double nearer = pose.distance / (pose.distance - y * std::sin(tilt));
  return {pose.middle.x + x * nearer, pose.middle.y + y * std::cos(tilt) * nearer};
}

inline constexpr double board_width = board_columns + (board_columns - 1) * board_gap;
inline constexpr double board_height = board_rows + (board_rows - 1) * board_gap;

/// Corners of a marker as they are drawn.
inline SeenMarker drawn_marker(const BoardPose& pose, int number) {
  const auto place = place_on_board(number);
  SeenMarker marker{number, {}};
  const PlanePoint corners[] = {{0, 0}, {1, 0}, {1, 1}, {0, 1}};
  for (std::size_t i = 0; i < 4; ++i) {
    marker.corners[i] = shown(pose, {place.x + corners[i].x - board_width / 2,
                                     place.y + corners[i].y - board_height / 2});
  }
  return marker;
}

/// Brightness of a board at a place measured in edges from its middle; less than 0 beside it.
inline double board_brightness(int board, PlanePoint place) {
  constexpr double ink = 30;
  constexpr double paper = 215;
  const double x = place.x + board_width / 2;
  const double y = place.y + board_height / 2;
  if (x < -board_gap || y < -board_gap || x >= board_width + board_gap ||
      y >= board_height + board_gap) {
    return -1;
  }
  const int column = static_cast<int>(std::floor(x / (1 + board_gap)));
  const int row = static_cast<int>(std::floor(y / (1 + board_gap)));
  const double in_x = x - column * (1 + board_gap);
  const double in_y = y - row * (1 + board_gap);
  if (x < 0 || y < 0 || in_x >= 1 || in_y >= 1) return paper;
  const int number = (board - 1) * markers_of_board + row * board_columns + column;
  const bool dark = marker_module_is_dark(number, static_cast<int>(in_x * marker_modules),
                                          static_cast<int>(in_y * marker_modules));
  return dark ? ink : paper;
}

/// Speckled grey ground of patches, for rock.
inline PhotoPixels speckled_ground(int width, int height, std::uint64_t seed) {
  PhotoPixels photo{width, height, {}};
  photo.rgb.reserve(static_cast<std::size_t>(width) * static_cast<std::size_t>(height) * 3);
  for (int y = 0; y < height; ++y) {
    for (int x = 0; x < width; ++x) {
      const auto patch = mixed_bits(seed + static_cast<std::uint64_t>(y / 23 * 1000 + x / 31));
      const auto grain =
          mixed_bits(seed + static_cast<std::uint64_t>(y) * 70001 + static_cast<std::uint64_t>(x));
      const auto grey = static_cast<std::uint8_t>(60 + patch % 110 + grain % 16);
      photo.rgb.insert(photo.rgb.end(), 3, grey);
    }
  }
  return photo;
}

/// Draws a board on a photo, each pixel the mean of sixteen places of it.
inline void draw_board(PhotoPixels& photo, const BoardPose& pose, int board) {
  const SeenPoint corners[] = {{{shown(pose, {-2, -2}).x, shown(pose, {-2, -2}).y}, {-2, -2}},
                               {{shown(pose, {2, -2}).x, shown(pose, {2, -2}).y}, {2, -2}},
                               {{shown(pose, {2, 2}).x, shown(pose, {2, 2}).y}, {2, 2}},
                               {{shown(pose, {-2, 2}).x, shown(pose, {-2, 2}).y}, {-2, 2}}};
  const auto back = PlaneView::through(corners);
  if (!back) return;
  constexpr int fine = 4;
  for (int y = 0; y < photo.height; ++y) {
    for (int x = 0; x < photo.width; ++x) {
      const auto first = 3 * (static_cast<std::size_t>(y) * static_cast<std::size_t>(photo.width) +
                              static_cast<std::size_t>(x));
      double sum = 0;
      bool on_board = false;
      for (int part = 0; part < fine * fine; ++part) {
        const auto at =
            back->on_picture({x + (part % fine + 0.5) / fine, y + (part / fine + 0.5) / fine});
        const double board_grey = board_brightness(board, {at.x, at.y});
        if (board_grey >= 0) on_board = true;
        sum += board_grey >= 0 ? board_grey : photo.rgb[first];
      }
      if (!on_board) continue;
      for (std::size_t i = 0; i < 3; ++i) {
        photo.rgb[first + i] = static_cast<std::uint8_t>(sum / (fine * fine));
      }
    }
  }
}

}  // namespace proofstone
