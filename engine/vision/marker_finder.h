#pragma once

#include <map>
#include <vector>

#include "engine/vision/marker_board.h"
#include "engine/vision/photo_pixels.h"

namespace proofstone {

/// The markers on a photo, by number; one that is seen twice is left out, because one of the two is
/// no marker or another board. Found are markers of about 20 pixels or more along a side, turned
/// and oblique up to about 65 degrees, sharp enough that their modules can be told apart.
std::vector<SeenMarker> find_markers(const PhotoPixels& photo);

/// The same by board, from 1.
std::map<int, std::vector<SeenMarker>> find_boards(const PhotoPixels& photo);

}  // namespace proofstone
