#pragma once

#include <string>
#include <vector>

#include "engine/vision/photo_gradation.h"
#include "engine/vision/stones_on_photos.h"

namespace proofstone {

/// What a reader of sizes from photos must know beside them: what the limits leave out, and how
/// better photos are taken.
std::vector<std::string> cautions_of_photos(const PhotoSet& set, const StonesOnPhotos& seen,
                                            const std::vector<PhotoSize>& sizes);

}  // namespace proofstone
