#pragma once

#include <cstddef>
#include <vector>

namespace proofstone {

/// Maps of a picture, channel by channel within each pixel, row by row; one pixel of zeros lies all
/// round, so that a 3×3 window never leaves them.
class ChannelMaps {
 public:
  ChannelMaps(int width, int height, int channels);

  int width() const { return width_; }
  int height() const { return height_; }
  int channels() const { return channels_; }
  /// The channels of a pixel; x from −1 to width, y from −1 to height.
  const float* at(int x, int y) const { return values_.data() + index(x, y); }
  float* at(int x, int y) { return values_.data() + index(x, y); }

 private:
  std::size_t index(int x, int y) const {
    return (static_cast<std::size_t>(y + 1) * static_cast<std::size_t>(width_ + 2) +
            static_cast<std::size_t>(x + 1)) *
           static_cast<std::size_t>(channels_);
  }

  int width_;
  int height_;
  int channels_;
  std::vector<float> values_;
};

/// A convolution of 3×3 pixels (`kernel` 3) or of each pixel by itself (`kernel` 1).
struct Convolution {
  int inputs = 0;
  int outputs = 0;
  int kernel = 3;
  std::vector<float> weights;  ///< [output][input][row][column], as files keep them
  std::vector<float> bias;     ///< [output]
};

/// 3×3, then what is below 0 becomes 0. The channels of `sources`, which have one size, count one
/// after the other as its inputs; outputs a multiple of 8. Every output sums in one order whatever
/// the machine, so the result is the same bit by bit natively and in a browser.
ChannelMaps convolved(const std::vector<const ChannelMaps*>& sources, const Convolution& layer);

/// Each pixel by itself, nothing cut off.
ChannelMaps combined(const ChannelMaps& source, const Convolution& layer);

/// The largest of each 2×2 pixels; width and height even.
ChannelMaps halved(const ChannelMaps& source);

/// Each pixel as 2×2.
ChannelMaps doubled(const ChannelMaps& source);

}  // namespace proofstone
