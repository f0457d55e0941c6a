#include "engine/vision/outline_network.h"

#include <algorithm>
#include <cmath>
#include <cstring>
#include <string>

#include "engine/vision/smooth_functions.h"

namespace proofstone {
namespace {

constexpr std::string_view magic = "PSOUTL01";
constexpr int levels = 5;
constexpr int block = 1 << (levels - 1);  ///< pixels that the lowest level sees as one
constexpr std::uint32_t widest = 64;
// A pixel from 0 to 1 becomes (pixel − middle)·gain, as in training.
constexpr float middle = 0.45F;
constexpr float gain = 4.0F;

std::uint32_t checksum(std::string_view bytes) {
  std::uint32_t value = 0x811C9DC5U;
  for (const char c : bytes) value = (value ^ static_cast<unsigned char>(c)) * 0x01000193U;
  return value;
}

/// Takes little-endian numbers off the front of bytes that are long enough.
class WeightReader {
 public:
  explicit WeightReader(std::string_view bytes) : bytes_(bytes) {}

  std::uint32_t whole(std::size_t size) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < size; ++i) {
      value |= static_cast<std::uint32_t>(static_cast<unsigned char>(bytes_[i])) << (8 * i);
    }
    bytes_.remove_prefix(size);
    return value;
  }
  float single() {
    const std::uint32_t bits = whole(4);
    float value = 0;
    std::memcpy(&value, &bits, sizeof value);
    return value;
  }
  /// A 16-bit float: sign, 5 bits of exponent, 10 of fraction.
  float half() {
    const std::uint32_t bits = whole(2);
    const int exponent = static_cast<int>(bits >> 10 & 31U);
    const auto fraction = static_cast<float>(bits & 1023U);
    const float size =
        exponent == 0 ? std::ldexp(fraction, -24) : std::ldexp(1024.0F + fraction, exponent - 25);
    if (exponent == 31) return std::nanf("");
    return (bits & 0x8000U) != 0 ? -size : size;
  }

 private:
  std::string_view bytes_;
};

std::vector<Convolution> empty_layers(int width) {
  std::vector<Convolution> layers;
  int before = 3;
  const auto add_pair = [&layers](int inputs, int outputs) {
    layers.push_back({inputs, outputs, 3, {}, {}});
    layers.push_back({outputs, outputs, 3, {}, {}});
  };
  for (int level = 0; level < levels; ++level) {
    add_pair(before, width << level);
    before = width << level;
  }
  for (int level = levels - 2; level >= 0; --level) {
    add_pair(before + (width << level), width << level);
    before = width << level;
  }
  layers.push_back({width, 3, 1, {}, {}});
  return layers;
}

std::size_t weights_of(const Convolution& layer) {
  return static_cast<std::size_t>(layer.inputs) * static_cast<std::size_t>(layer.outputs) *
         static_cast<std::size_t>(layer.kernel * layer.kernel);
}

Problem no_weights(const std::string& what) {
  return {"no-weights", what, "", "weights of the outline network",
          "the file that came with this program"};
}

int up_to_blocks(int pixels) { return (pixels + block - 1) / block * block; }

ChannelMaps as_maps(const PhotoPixels& photo) {
  ChannelMaps maps(up_to_blocks(photo.width), up_to_blocks(photo.height), 3);
  for (int y = 0; y < maps.height(); ++y) {
    for (int x = 0; x < maps.width(); ++x) {
      const auto from = static_cast<std::size_t>(std::min(y, photo.height - 1)) *
                            static_cast<std::size_t>(photo.width) +
                        static_cast<std::size_t>(std::min(x, photo.width - 1));
      for (std::size_t channel = 0; channel < 3; ++channel) {
        const auto value = static_cast<float>(photo.rgb[from * 3 + channel]);
        maps.at(x, y)[channel] = (value / 255.0F - middle) * gain;
      }
    }
  }
  return maps;
}

}  // namespace

Expected<OutlineNetwork> OutlineNetwork::read(std::string_view bytes) {
  if (bytes.substr(0, magic.size()) != magic) return no_weights("These are no weights.");
  if (bytes.size() < magic.size() + 8) return no_weights("The weights are cut off.");
  WeightReader reader(bytes.substr(magic.size()));
  const std::uint32_t width = reader.whole(4);
  if (width == 0 || width % 8 != 0 || width > widest) {
    return no_weights("The weights are of a network whose width is not known here.");
  }
  OutlineNetwork network;
  network.layers_ = empty_layers(static_cast<int>(width));
  std::size_t needed = magic.size() + 8;
  for (const auto& layer : network.layers_) {
    needed += 2 * weights_of(layer) + 4 * static_cast<std::size_t>(layer.outputs);
  }
  if (bytes.size() != needed) {
    return no_weights("The weights are cut off, or longer than they may be.");
  }
  if (checksum(bytes.substr(0, needed - 4)) != WeightReader(bytes.substr(needed - 4)).whole(4)) {
    return no_weights("The weights are damaged.");
  }
  bool finite = true;
  for (auto& layer : network.layers_) {
    for (std::size_t i = weights_of(layer); i > 0; --i) {
      layer.weights.push_back(reader.half());
      finite = finite && std::isfinite(layer.weights.back());
    }
    for (int i = 0; i < layer.outputs; ++i) {
      layer.bias.push_back(reader.single());
      finite = finite && std::isfinite(layer.bias.back());
    }
  }
  if (!finite) return no_weights("Some of the weights are no numbers.");
  return network;
}

ChannelMaps OutlineNetwork::raw_maps(const PhotoPixels& photo,
                                     const OutlineProgress& progress) const {
  auto layer = layers_.begin();
  std::vector<ChannelMaps> kept;
  ChannelMaps maps = as_maps(photo);
  const auto next = [&](const std::vector<const ChannelMaps*>& sources) {
    maps = convolved(sources, *layer++);
    // Of the layers each has about as much to do as the next.
    if (progress) {
      progress(static_cast<double>(layer - layers_.begin()) / static_cast<double>(layers_.size()));
    }
  };
  for (int level = 0; level < levels; ++level) {
    if (level > 0) maps = halved(maps);
    next({&maps});
    next({&maps});
    if (level + 1 < levels) kept.push_back(maps);
  }
  for (; !kept.empty(); kept.pop_back()) {
    maps = doubled(maps);
    next({&maps, &kept.back()});
    next({&maps});
  }
  return combined(maps, *layer);
}

OutlineMaps OutlineNetwork::maps(const PhotoPixels& photo, const OutlineProgress& progress) const {
  const ChannelMaps raw = raw_maps(photo, progress);
  OutlineMaps maps{photo.width, photo.height, {}, {}, {}};
  for (int y = 0; y < photo.height; ++y) {
    for (int x = 0; x < photo.width; ++x) {
      const float* pixel = raw.at(x, y);
      maps.edge.push_back(logistic(pixel[0]));
      maps.rock.push_back(logistic(pixel[1]));
      maps.depth.push_back(logistic(pixel[2]));
    }
  }
  return maps;
}

}  // namespace proofstone
