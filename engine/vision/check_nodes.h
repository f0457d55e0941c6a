#pragma once

#include <vector>

#include "engine/vision/photo.h"

namespace proofstone {

/// So many outlines are looked at to check those that were found (reference study, section 10).
inline constexpr int nodes_of_check = 30;

/// A place on an outlined stone that is looked at.
struct CheckNode {
  int photo = 1;  ///< number of the photo, from 1
  PhotoPoint at;
};

/// Places for a check, shared out among the photos and spread evenly over what is outlined on each,
/// so that a stone is met by its visible area, as it counts: by a Halton sequence, of which the
/// places on outlines are kept. Stones that an edge cuts and outlines of balls and boards are left
/// out, as they are where sizes are read. Fewer where hardly anything is outlined. Photo by photo,
/// from the top down.
std::vector<CheckNode> check_nodes(const std::vector<Photo>& photos);

}  // namespace proofstone
