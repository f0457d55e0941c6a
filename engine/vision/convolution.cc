#include "engine/vision/convolution.h"

#include <algorithm>
#include <cstring>

// The same code for wide and for narrow vectors of this machine, chosen when the program starts.
#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__)
#define PROOFSTONE_FOR_EVERY_WIDTH [[gnu::target_clones("avx2", "default")]]
#else
#define PROOFSTONE_FOR_EVERY_WIDTH
#endif

namespace proofstone {
namespace {

constexpr int lanes = 8;
constexpr int tile = 6;  ///< pixels whose sums are held in registers
using Lanes = float __attribute__((vector_size(lanes * sizeof(float))));

/// Weights as they are used: [block of 8 outputs][row, column][input][8].
std::vector<float> by_blocks(const Convolution& layer) {
  std::vector<float> packed;
  packed.reserve(layer.weights.size());
  const int taps = layer.kernel * layer.kernel;
  for (int block = 0; block < layer.outputs; block += lanes) {
    for (int tap = 0; tap < taps; ++tap) {
      for (int input = 0; input < layer.inputs; ++input) {
        for (int lane = 0; lane < lanes; ++lane) {
          const int place = ((block + lane) * layer.inputs + input) * taps + tap;
          packed.push_back(layer.weights[static_cast<std::size_t>(place)]);
        }
      }
    }
  }
  return packed;
}

/// Where the inputs of a row come from.
struct RowSource {
  const float* upper_left;     ///< one pixel up and left of the row's first
  std::size_t between_rows;    ///< floats
  std::size_t between_pixels;  ///< floats, the number of channels
};

template <int Pixels>
inline __attribute__((always_inline)) void convolve_pixels(const std::vector<RowSource>& sources,
                                                           const float* weights, const float* bias,
                                                           std::size_t inputs, std::size_t x,
                                                           float* out, std::size_t outputs) {
  Lanes sums[Pixels];
  for (auto& sum : sums) std::memcpy(&sum, bias, sizeof(Lanes));
  for (std::size_t tap = 0; tap < 9; ++tap) {
    const float* weight = weights + tap * inputs * lanes;
    for (const RowSource& source : sources) {
      const std::size_t channels = source.between_pixels;
      const float* in =
          source.upper_left + tap / 3 * source.between_rows + (x + tap % 3) * channels;
      for (std::size_t channel = 0; channel < channels; ++channel, weight += lanes) {
        Lanes w;
        std::memcpy(&w, weight, sizeof(Lanes));
        for (std::size_t pixel = 0; pixel < Pixels; ++pixel) {
          sums[pixel] += w * in[pixel * channels + channel];
        }
      }
    }
  }
  for (std::size_t pixel = 0; pixel < Pixels; ++pixel) {
    float* to = out + (x + pixel) * outputs;
    for (int lane = 0; lane < lanes; ++lane) to[lane] = std::max(sums[pixel][lane], 0.0F);
  }
}

/// One row of 8 outputs.
PROOFSTONE_FOR_EVERY_WIDTH
void convolve_row(const std::vector<RowSource>& sources, const float* weights, const float* bias,
                  std::size_t inputs, std::size_t width, float* out, std::size_t outputs) {
  std::size_t x = 0;
  for (; x + tile <= width; x += tile) {
    convolve_pixels<tile>(sources, weights, bias, inputs, x, out, outputs);
  }
  for (; x < width; ++x) convolve_pixels<1>(sources, weights, bias, inputs, x, out, outputs);
}

}  // namespace

ChannelMaps::ChannelMaps(int width, int height, int channels)
    : width_(width),
      height_(height),
      channels_(channels),
      values_(static_cast<std::size_t>(width + 2) * static_cast<std::size_t>(height + 2) *
              static_cast<std::size_t>(channels)) {}

ChannelMaps convolved(const std::vector<const ChannelMaps*>& sources, const Convolution& layer) {
  const ChannelMaps& first = *sources.front();
  ChannelMaps result(first.width(), first.height(), layer.outputs);
  const auto weights = by_blocks(layer);
  const auto inputs = static_cast<std::size_t>(layer.inputs);
  const auto outputs = static_cast<std::size_t>(layer.outputs);
  std::vector<RowSource> rows(sources.size());
  for (int y = 0; y < first.height(); ++y) {
    for (std::size_t i = 0; i < sources.size(); ++i) {
      const auto channels = static_cast<std::size_t>(sources[i]->channels());
      const std::size_t across = static_cast<std::size_t>(first.width()) + 2;
      rows[i] = {sources[i]->at(-1, y - 1), across * channels, channels};
    }
    for (std::size_t block = 0; block < outputs; block += lanes) {
      convolve_row(rows, weights.data() + block * 9 * inputs, layer.bias.data() + block, inputs,
                   static_cast<std::size_t>(first.width()), result.at(0, y) + block, outputs);
    }
  }
  return result;
}

ChannelMaps combined(const ChannelMaps& source, const Convolution& layer) {
  ChannelMaps result(source.width(), source.height(), layer.outputs);
  for (int y = 0; y < source.height(); ++y) {
    for (int x = 0; x < source.width(); ++x) {
      const float* in = source.at(x, y);
      float* out = result.at(x, y);
      for (int output = 0; output < layer.outputs; ++output) {
        const float* weights =
            layer.weights.data() + static_cast<std::ptrdiff_t>(output) * layer.inputs;
        float sum = layer.bias[static_cast<std::size_t>(output)];
        for (int input = 0; input < layer.inputs; ++input) sum += weights[input] * in[input];
        out[output] = sum;
      }
    }
  }
  return result;
}

ChannelMaps halved(const ChannelMaps& source) {
  ChannelMaps result(source.width() / 2, source.height() / 2, source.channels());
  for (int y = 0; y < result.height(); ++y) {
    for (int x = 0; x < result.width(); ++x) {
      const float* above = source.at(2 * x, 2 * y);
      const float* below = source.at(2 * x, 2 * y + 1);
      float* out = result.at(x, y);
      const int n = source.channels();
      for (int channel = 0; channel < n; ++channel) {
        out[channel] = std::max(std::max(above[channel], above[channel + n]),
                                std::max(below[channel], below[channel + n]));
      }
    }
  }
  return result;
}

ChannelMaps doubled(const ChannelMaps& source) {
  ChannelMaps result(source.width() * 2, source.height() * 2, source.channels());
  for (int y = 0; y < result.height(); ++y) {
    for (int x = 0; x < result.width(); ++x) {
      std::copy_n(source.at(x / 2, y / 2), source.channels(), result.at(x, y));
    }
  }
  return result;
}

}  // namespace proofstone
