#pragma once

#include "piles/camera.h"
#include "piles/settling.h"

namespace proofstone::piles {

/// Area in pixels that a stone would cover on the picture if nothing hid it and the picture went on
/// past its edges: that of the hull of its points as the camera sees them. 0 for a stone that
/// reaches behind the camera.
double silhouette_area(const Stone& stone, const btTransform& pose, const Camera& camera);

}  // namespace proofstone::piles
