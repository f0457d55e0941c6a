#pragma once

#include <functional>
#include <string_view>
#include <vector>

#include "engine/finding/problem.h"
#include "engine/vision/convolution.h"
#include "engine/vision/photo_pixels.h"

namespace proofstone {

/// What the network says of each pixel, row by row, from 0 to 1.
struct OutlineMaps {
  int width = 0;
  int height = 0;
  std::vector<float> edge;   ///< that an edge of a stone runs here
  std::vector<float> rock;   ///< that this is a stone
  std::vector<float> depth;  ///< how deep within its stone: 0 at the rim, 1 at the innermost
};

/// Hears how far the work is, from 0 to 1.
using OutlineProgress = std::function<void(double)>;

/// The small network that finds the outlines of stones: a U-Net of five levels, trained on rendered
/// piles (piles/training/README.md tells how, on what, and how well it does).
class OutlineNetwork {
 public:
  /// From a file of weights: "PSOUTL01", the width of the network (32 bits), then of each
  /// convolution its weights [output][input][row][column] in 16-bit floats and its bias in 32-bit
  /// floats, last the 32-bit FNV-1a of all before; little-endian. Problems: another kind of file,
  /// cut off, too long, damaged, numbers that are none.
  static Expected<OutlineNetwork> read(std::string_view bytes);

  /// The three maps as numbers before they are squeezed between 0 and 1: edge, rock, depth.
  ChannelMaps raw_maps(const PhotoPixels& photo, const OutlineProgress& progress = {}) const;
  /// The maps of a photo of any size; what is missing to whole blocks of 16 pixels repeats the
  /// edge.
  OutlineMaps maps(const PhotoPixels& photo, const OutlineProgress& progress = {}) const;

 private:
  std::vector<Convolution> layers_;
};

}  // namespace proofstone
