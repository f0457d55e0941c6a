#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/vision/ball_finder.h"
#include "engine/vision/outline_network.h"
#include "engine/vision/picture_geometry.h"

namespace proofstone {

/// Of the largest picture that is made of a photo to find its stones, in pixels.
inline constexpr int longest_side_worked_on = 1536;

/// The stones that were found on a photo.
struct OutlinedPhoto {
  std::vector<std::vector<PhotoPoint>> outlines;  ///< in pixels of the photo as it was taken
  double working_pixel = 1;  ///< pixels of the photo to one of the picture that was worked on
  double rock_share = 0;     ///< of the picture, from 0 to 1
  std::vector<BallInPicture> balls;  ///< that may tell the scale, in pixels of the photo
  /// What makes the outlines less sure than they could be, and how a better photo is taken.
  std::vector<std::string> cautions;
};

/// The photo in another size: each pixel is the mean of what it covers, weighted by a tent.
PhotoPixels resized(const PhotoPixels& photo, int width, int height);

/// What is wrong with a photo's pixels before anything is looked for: they do not fill the picture,
/// or a side has fewer than 240.
std::optional<Problem> problem_of_pixels(const PhotoPixels& photo, const std::string& where);

/// Finds the stones on a photo. It is worked on at 768 pixels along its longer side; where the
/// stones then are small or large, once more in a size that suits them. Problems, with `where`:
/// pixels that are none or do not fill the picture, a side under 240 pixels, too dark or too bright
/// to see, no rock or little of it, fewer than 20 stones.
Expected<OutlinedPhoto> outline_photo(const PhotoPixels& photo, const OutlineNetwork& network,
                                      const std::string& where,
                                      const OutlineProgress& progress = {});

}  // namespace proofstone
