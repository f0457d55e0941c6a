#pragma once

#include <vector>

#include "engine/vision/outline_network.h"
#include "engine/vision/picture_geometry.h"

namespace proofstone {

/// Which stone each pixel belongs to, row by row: from 1, 0 for none. The pixels of a stone hang
/// together by their sides.
struct StoneRegions {
  int width = 0;
  int height = 0;
  int stones = 0;
  std::vector<int> stone;
};

/// Fewer pixels than these are no stone but noise.
inline constexpr int least_pixels = 12;

/// Stones out of what the network says: innermost places that stand out by 0.2 of the depth from
/// any higher one are one stone each; the rock is then flooded from them, from deep to shallow and
/// edges last.
StoneRegions stone_regions(const OutlineMaps& maps);

/// The outline of each stone in pixels, through the middles of the sides of its pixels and then
/// straightened by up to half a pixel; holes are filled. Outlines do not cross themselves.
std::vector<std::vector<PhotoPoint>> outlines_of(const StoneRegions& regions);

}  // namespace proofstone
