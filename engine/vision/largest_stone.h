#pragma once

#include "engine/finding/steps.h"
#include "engine/vision/photo.h"

namespace proofstone {

/// The largest stone in sight by its two ends on a photo. Nothing else on a photo tells it.
struct LargestByEnds {
  Length size;
  Length low;   ///< of the 90 % interval, by the error of the scale alone
  Length high;  ///< of the 90 % interval
};

/// By the length of a pixel half-way between both ends. Precondition: set.tapped_largest. Problems:
/// a photo that there is not or that has no scale, ends at one place or off the picture.
Expected<LargestByEnds> largest_by_ends(const PhotoSet& set, Steps& steps);

}  // namespace proofstone
