#pragma once

#include <map>
#include <string>
#include <vector>

#include "engine/vision/ball_finder.h"
#include "engine/vision/marker_finder.h"

namespace proofstone {

/// What may tell the scale of a photo, and what of its light makes it hard to measure.
struct PhotoMarks {
  std::vector<BallInPicture> balls;               ///< in pixels of the photo
  std::map<int, std::vector<SeenMarker>> boards;  ///< by their numbers
  std::vector<std::string> cautions;
};

/// The photo made so small that its longer side has `side` pixels at most; balls and light are
/// looked for on that.
PhotoPixels with_longer_side(const PhotoPixels& photo, double side);

/// Balls found on a photo that was made smaller, in pixels of the photo.
std::vector<BallInPicture> balls_on_smaller(const PhotoPixels& smaller, int photo_width);

/// Looks for balls, marker boards, darkness and blur; needs no weights. Precondition: the pixels
/// fill the picture.
PhotoMarks marks_on_photo(const PhotoPixels& photo);

}  // namespace proofstone
