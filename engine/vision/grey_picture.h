#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

#include "engine/vision/photo_pixels.h"

namespace proofstone {

/// A picture's brightness, 8 bits a pixel, row by row from the top left.
struct GreyPicture {
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> grey;

  std::uint8_t at(int x, int y) const {
    return grey[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) +
                static_cast<std::size_t>(x)];
  }
  /// Between the middles of four pixels; beyond the edge what stands at the edge. The middle of the
  /// first pixel lies at 0.5, 0.5.
  double between(double x, double y) const;
};

/// Brightness of a photo (ITU-R BT.601 weights of red, green and blue).
GreyPicture grey_of(const PhotoPixels& photo);

/// The picture at half its size, each pixel the mean of four.
GreyPicture halved(const GreyPicture& picture);

/// Which pixels are darker than their neighbourhood of `reach` pixels all round by `by` or more:
/// 1, else 0.
std::vector<std::uint8_t> darker_than_around(const GreyPicture& picture, int reach, int by);

}  // namespace proofstone
