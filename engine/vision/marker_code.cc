#include "engine/vision/marker_code.h"

#include <bit>
#include <cstddef>
#include <iterator>

namespace proofstone {
namespace {

constexpr int n = marker_inner_modules;
/// Five could be mended; whatever is square and dark on a heap of rock is misread less often so.
constexpr int most_misread = 2;

constexpr MarkerBits codes[] = {0xD5D628584, 0xD97F18B49, 0xDD280910E, 0xE479E9C98, 0xEBCBCA822,
                                0xF31DAB3AC, 0x056A5D085, 0x10652E1D4, 0x22B1DFEAD, 0x265AD0472,
                                0x34FE91B86, 0x3FF962CD5, 0x43A25329A, 0x474B4385F, 0x4E9D243E9,
                                0x5246149AE, 0x5997F5538, 0x683BB6C4C, 0x6BE4A7211, 0x7E3158EEA,
                                0x81DA494AF, 0x858339A74, 0x8CD51A5FE, 0x9F21CC2D7};
static_assert(std::size(codes) == known_markers);

constexpr MarkerBits bit_at(int column, int row) {
  return MarkerBits{1} << (n * n - 1 - (row * n + column));
}

/// What is seen after the picture is turned a quarter anticlockwise, so that a marker turned
/// clockwise once stands upright.
MarkerBits turned_back(MarkerBits seen) {
  MarkerBits turned = 0;
  for (int row = 0; row < n; ++row) {
    for (int column = 0; column < n; ++column) {
      // Of an upright marker, upper left is seen at the upper right once it is turned clockwise.
      if ((seen & bit_at(n - 1 - row, column)) != 0) turned |= bit_at(column, row);
    }
  }
  return turned;
}

}  // namespace

MarkerBits marker_bits(int number) { return codes[static_cast<std::size_t>(number)]; }

bool marker_module_is_dark(int number, int column, int row) {
  const auto on_rim = [](int at) { return at == 0 || at == marker_modules - 1; };
  if (on_rim(column) || on_rim(row)) return true;
  return (marker_bits(number) & bit_at(column - 1, row - 1)) == 0;
}

std::optional<ReadMarker> read_marker(MarkerBits seen) {
  for (int turns = 0; turns < 4; ++turns) {
    for (int number = 0; number < known_markers; ++number) {
      if (std::popcount(marker_bits(number) ^ seen) <= most_misread) {
        return ReadMarker{number, turns};
      }
    }
    seen = turned_back(seen);
  }
  return std::nullopt;
}

}  // namespace proofstone
