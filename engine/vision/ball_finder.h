#pragma once

#include <vector>

#include "engine/vision/outline_network.h"
#include "engine/vision/picture_geometry.h"

namespace proofstone {

/// A ball on a picture: its outline is a circle.
struct BallInPicture {
  PhotoPoint middle;
  double radius = 0;  ///< pixels
};

/// Balls that lie on the rock as a scale, the largest first: round patches of a colour that the
/// rock does not have, at least 8 pixels in radius, of whose rim two thirds can be told. Whoever
/// measures looks them over: what else is round and coloured is found as well, and grey balls are
/// not.
std::vector<BallInPicture> find_balls(const PhotoPixels& photo);

}  // namespace proofstone
