#include "piles/taps.h"

#include <algorithm>
#include <array>
#include <map>

#include "engine/vision/picture_geometry.h"
#include "simulation/draws.h"

namespace proofstone::piles {
namespace {

constexpr double error_of_tap = 0.03;

/// Ends of each row of a stone's pixels: enough for what lies about it.
std::vector<PhotoPoint> rim_of(const StoneRegions& stones, int stone) {
  std::vector<PhotoPoint> rim;
  for (int y = 0; y < stones.height; ++y) {
    const auto row = stones.stone.begin() + std::ptrdiff_t{y} * stones.width;
    const auto first = std::find(row, row + stones.width, stone);
    if (first == row + stones.width) continue;
    const auto past = std::find(std::make_reverse_iterator(row + stones.width),
                                std::make_reverse_iterator(row), stone)
                          .base();
    for (const auto x : {first - row, past - row}) {
      rim.push_back({static_cast<double>(x), static_cast<double>(y)});
      rim.push_back({static_cast<double>(x), y + 1.0});
    }
  }
  return rim;
}

/// The two ends of an axis about a middle, moved so that both are on the picture.
std::array<double, 2> ends_of(double middle, double length, double picture) {
  const double from = std::clamp(middle - length / 2, 0.0, std::max(0.0, picture - length));
  return {from, std::min(from + length, picture)};
}

}  // namespace

std::vector<SeenTap> seen_taps(const TrialPicture& picture, const TapGrid& grid, unsigned seed) {
  const StoneRegions& stones = picture.stones;
  const auto pieces = pieces_of(stones);
  std::map<int, RectangleSides> sides;  // of stones met
  Draws draws(seed);
  std::vector<SeenTap> taps;
  for (int node = 0; node < grid.columns * grid.rows; ++node) {
    const PhotoPoint at{(node % grid.columns + 0.5) * stones.width / grid.columns,
                        (node / grid.columns + 0.5) * stones.height / grid.rows};
    const auto pixel = static_cast<std::size_t>(at.y) * static_cast<std::size_t>(stones.width) +
                       static_cast<std::size_t>(at.x);
    const int stone = stones.stone.at(pixel);
    if (stone == 0) continue;
    if (!sides.contains(stone)) sides[stone] = tightest_rectangle(rim_of(stones, stone));
    const auto index = static_cast<std::size_t>(stone - 1);
    const double alone = picture.alone.at(index);
    SeenTap tap;
    tap.node = at;
    tap.along = sides[stone].longest * (1 + error_of_tap * draws.normal());
    tap.across = sides[stone].shortest * (1 + error_of_tap * draws.normal());
    tap.shows = alone > 0 ? pieces[index].area / alone : 0;
    taps.push_back(tap);
  }
  return taps;
}

std::vector<TappedStone> tapped_stones(const std::vector<SeenTap>& taps, double least_shown,
                                       const PictureSize& picture) {
  std::vector<TappedStone> tapped;
  for (const auto& tap : taps) {
    TappedStone stone;
    stone.node = tap.node;
    stone.mostly_hidden = tap.shows < least_shown;
    const auto level = ends_of(tap.node.x, tap.along, picture.width);
    const auto upright = ends_of(tap.node.y, tap.across, picture.height);
    stone.long_from = {level[0], tap.node.y};
    stone.long_to = {level[1], tap.node.y};
    stone.short_from = {tap.node.x, upright[0]};
    stone.short_to = {tap.node.x, upright[1]};
    tapped.push_back(stone);
  }
  return tapped;
}

}  // namespace proofstone::piles
