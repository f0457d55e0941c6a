#pragma once

#include "engine/vision/stones_on_photos.h"

namespace proofstone {

/// Pictures are cut into 4 by 3 blocks, 4 along the longer side.
inline constexpr std::size_t blocks_of_photo = 12;

/// Adds the stones of one photo, the one at `index` of its set, by its scale, which is in
/// `seen.scales` already. Internal to stones_on_photos.
void read_photo(const Photo& photo, std::size_t index, StonesOnPhotos& seen, Problems& problems);

}  // namespace proofstone
