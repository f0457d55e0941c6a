#include "engine/vision/convolution.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "engine/vision/drawn_photos.h"

namespace proofstone {
namespace {

float any_number(std::uint64_t seed) { return static_cast<float>(2 * part_of_one(seed) - 1); }

ChannelMaps any_maps(int width, int height, int channels, std::uint64_t seed) {
  ChannelMaps maps(width, height, channels);
  for (int y = 0; y < height; ++y) {
    for (int x = 0; x < width; ++x) {
      for (int c = 0; c < channels; ++c) maps.at(x, y)[c] = any_number(seed++);
    }
  }
  return maps;
}

Convolution any_layer(int inputs, int outputs, int kernel) {
  Convolution layer{inputs, outputs, kernel, {}, {}};
  for (int i = 0; i < inputs * outputs * kernel * kernel; ++i) {
    layer.weights.push_back(any_number(70'000 + static_cast<std::uint64_t>(i)));
  }
  for (int i = 0; i < outputs; ++i) {
    layer.bias.push_back(any_number(90'000 + static_cast<std::uint64_t>(i)));
  }
  return layer;
}

/// By the definition, in doubles: Σ over rows, columns and inputs, 0 beyond the edge.
double by_definition(const ChannelMaps& first, const ChannelMaps& second, const Convolution& layer,
                     int x, int y, int output) {
  double sum = static_cast<double>(layer.bias[static_cast<std::size_t>(output)]);
  for (int row = 0; row < 3; ++row) {
    for (int column = 0; column < 3; ++column) {
      const int at_x = x + column - 1;
      const int at_y = y + row - 1;
      if (at_x < 0 || at_y < 0 || at_x >= first.width() || at_y >= first.height()) continue;
      for (int input = 0; input < layer.inputs; ++input) {
        const bool in_first = input < first.channels();
        const float value = in_first ? first.at(at_x, at_y)[input]
                                     : second.at(at_x, at_y)[input - first.channels()];
        const int place = ((output * layer.inputs + input) * 3 + row) * 3 + column;
        sum += static_cast<double>(value) *
               static_cast<double>(layer.weights[static_cast<std::size_t>(place)]);
      }
    }
  }
  return std::max(0.0, sum);
}

TEST(Convolution, IsWhatItsDefinitionSays) {
  // Widths below, at and beyond what is worked off at once.
  for (const int width : {1, 5, 6, 13}) {
    const auto first = any_maps(width, 4, 3, 1);
    const auto second = any_maps(width, 4, 5, 5000);
    const auto layer = any_layer(8, 16, 3);
    const auto result = convolved({&first, &second}, layer);
    for (int y = 0; y < 4; ++y) {
      for (int x = 0; x < width; ++x) {
        for (int output = 0; output < 16; ++output) {
          EXPECT_NEAR(result.at(x, y)[output], by_definition(first, second, layer, x, y, output),
                      1e-5);
        }
      }
    }
  }
}

TEST(Convolution, LeavesZerosAllRound) {
  const auto source = any_maps(3, 2, 8, 1);
  const auto result = convolved({&source}, any_layer(8, 8, 3));
  for (int x = -1; x <= 3; ++x) {
    for (int c = 0; c < 8; ++c) {
      EXPECT_EQ(result.at(x, -1)[c], 0);
      EXPECT_EQ(result.at(x, 2)[c], 0);
    }
  }
}

TEST(Convolution, OfSinglePixelsCutsNothingOff) {
  const auto source = any_maps(3, 2, 4, 1);
  const auto layer = any_layer(4, 3, 1);
  const auto result = combined(source, layer);
  double sum = static_cast<double>(layer.bias[2]);
  for (std::size_t i = 0; i < 4; ++i) {
    sum += static_cast<double>(layer.weights[8 + i]) * static_cast<double>(source.at(2, 1)[i]);
  }
  EXPECT_NEAR(result.at(2, 1)[2], sum, 1e-6);
}

TEST(ChannelMaps, AreHalvedByTheirLargestAndDoubledByRepeating) {
  const auto source = any_maps(4, 2, 2, 1);
  const auto half = halved(source);
  EXPECT_EQ(half.width(), 2);
  EXPECT_EQ(half.height(), 1);
  EXPECT_EQ(half.at(1, 0)[1], std::max({source.at(2, 0)[1], source.at(3, 0)[1], source.at(2, 1)[1],
                                        source.at(3, 1)[1]}));
  const auto again = doubled(half);
  EXPECT_EQ(again.at(2, 1)[1], half.at(1, 0)[1]);
  EXPECT_EQ(again.at(1, 0)[0], half.at(0, 0)[0]);
}

}  // namespace
}  // namespace proofstone
