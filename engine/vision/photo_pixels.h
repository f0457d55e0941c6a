#pragma once

#include <cstdint>
#include <vector>

namespace proofstone {

/// A photo's pixels: red, green, blue, 8 bits each, row by row from the top left.
struct PhotoPixels {
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> rgb;
};

}  // namespace proofstone
