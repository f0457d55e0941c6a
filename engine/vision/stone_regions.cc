#include "engine/vision/stone_regions.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

#include "engine/vision/smooth_functions.h"

namespace proofstone {
namespace {

// Found in trials on rendered piles: a lower step splits stones at their facets.
constexpr double standing_out = 0.20;
constexpr double edge_counts = 0.6;
constexpr double smoothing = 1.2;  ///< standard deviation in pixels
constexpr float least_rock = 0.5F;
/// Levels between 0 and 1, so that one order of pixels holds on every machine.
constexpr int steps = 4096;
constexpr std::size_t levels_of_water = std::size_t{2} * steps;

/// Pixels of a picture by one number.
class PixelGrid {
 public:
  PixelGrid(int width, int height) : width_(width), height_(height) {}
  std::size_t count() const {
    return static_cast<std::size_t>(width_) * static_cast<std::size_t>(height_);
  }
  /// Calls with each neighbour of a pixel by its sides, and then by its corners.
  template <class Visit>
  void visit_neighbours(int pixel, int most, Visit visit) const {
    constexpr std::array<std::array<int, 2>, 8> ways{
        {{1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, 1}, {1, -1}, {-1, -1}}};
    const int x = pixel % width_;
    const int y = pixel / width_;
    for (std::size_t way = 0; way < static_cast<std::size_t>(most); ++way) {
      const int to_x = x + ways[way][0];
      const int to_y = y + ways[way][1];
      if (to_x < 0 || to_y < 0 || to_x >= width_ || to_y >= height_) continue;
      visit(to_y * width_ + to_x);
    }
  }

 private:
  int width_;
  int height_;
};

std::size_t place(int pixel) { return static_cast<std::size_t>(pixel); }

/// The map averaged by a bell about each pixel; beyond the edge the edge repeats.
std::vector<float> smoothed(const std::vector<float>& map, int width, int height) {
  constexpr int reach = 4;
  std::array<float, 2 * reach + 1> bell{};
  double sum = 0;
  for (int i = -reach; i <= reach; ++i) sum += exponential(-0.5 * i * i / (smoothing * smoothing));
  for (int i = -reach; i <= reach; ++i) {
    bell[place(i + reach)] =
        static_cast<float>(exponential(-0.5 * i * i / (smoothing * smoothing)) / sum);
  }
  const auto along = [&](const std::vector<float>& from, bool rows) {
    std::vector<float> to(from.size());
    for (int y = 0; y < height; ++y) {
      for (int x = 0; x < width; ++x) {
        float value = 0;
        for (int i = -reach; i <= reach; ++i) {
          const int at_x = rows ? std::clamp(x + i, 0, width - 1) : x;
          const int at_y = rows ? y : std::clamp(y + i, 0, height - 1);
          value += bell[place(i + reach)] * from[place(at_y * width + at_x)];
        }
        to[place(y * width + x)] = value;
      }
    }
    return to;
  };
  return along(along(map, true), false);
}

int step_of(double share) {
  return static_cast<int>(std::lround(std::clamp(share, 0.0, 1.0) * (steps - 1)));
}

/// Grows patches from the deepest pixels down. Where two meet, the one with the lower summit is a
/// stone of its own if its summit stands out enough from there; then both are one patch.
class Summits {
 public:
  Summits(const std::vector<int>& levels, const PixelGrid& grid)
      : levels_(levels), grid_(grid), patch_(levels.size(), none) {}

  /// Summits of the pixels of level 0 and above that stand out by so much.
  std::vector<int> standing_out_by(int least) {
    least_ = least;
    std::vector<std::vector<int>> at_level(steps);
    for (std::size_t i = 0; i < levels_.size(); ++i) {
      if (levels_[i] >= 0) at_level[place(levels_[i])].push_back(static_cast<int>(i));
    }
    for (auto level = at_level.rbegin(); level != at_level.rend(); ++level) {
      for (const int pixel : *level) add(pixel);
    }
    for (std::size_t i = 0; i < patch_.size(); ++i) {
      const bool whole = patch_[i] == static_cast<int>(i);
      if (whole && levels_[i] >= least_) found_.push_back(static_cast<int>(i));
    }
    std::sort(found_.begin(), found_.end());
    return found_;
  }

 private:
  static constexpr int none = -1;

  /// The summit of a pixel's patch: it stands for the patch.
  int summit(int pixel) {
    while (patch_[place(pixel)] != pixel) {
      patch_[place(pixel)] = patch_[place(patch_[place(pixel)])];
      pixel = patch_[place(pixel)];
    }
    return pixel;
  }

  void add(int pixel) {
    patch_[place(pixel)] = pixel;
    grid_.visit_neighbours(pixel, 8, [&](int neighbour) {
      if (patch_[place(neighbour)] != none) join(summit(pixel), summit(neighbour), pixel);
    });
  }

  void join(int one, int other, int where) {
    if (one == other) return;
    const bool other_lower = levels_[place(other)] != levels_[place(one)]
                                 ? levels_[place(other)] < levels_[place(one)]
                                 : other > one;
    const int lower = other_lower ? other : one;
    if (levels_[place(lower)] - levels_[place(where)] >= least_) found_.push_back(lower);
    patch_[place(lower)] = lower == one ? other : one;
  }

  const std::vector<int>& levels_;
  const PixelGrid& grid_;
  std::vector<int> patch_;
  std::vector<int> found_;
  int least_ = 0;
};

/// Floods the pixels that have a cost from the seeds, cheap ones first; what costs less than the
/// water stands is flooded at once.
void flood(const std::vector<int>& costs, const std::vector<int>& seeds, const PixelGrid& grid,
           std::vector<int>& stone) {
  std::vector<std::vector<int>> waiting(levels_of_water);
  int number = 0;
  for (const int seed : seeds) {
    stone[place(seed)] = ++number;
    waiting[place(costs[place(seed)])].push_back(seed);
  }
  for (std::size_t level = 0; level < waiting.size(); ++level) {
    // The queue grows while it is worked off.
    for (std::size_t next = 0; next < waiting[level].size(); ++next) {
      const int pixel = waiting[level][next];
      grid.visit_neighbours(pixel, 4, [&](int neighbour) {
        const int cost = costs[place(neighbour)];
        if (cost < 0 || stone[place(neighbour)] != 0) return;
        stone[place(neighbour)] = stone[place(pixel)];
        waiting[std::max(level, place(cost))].push_back(neighbour);
      });
    }
    waiting[level] = {};
  }
}

/// Takes away what is too small to be told, and numbers the rest anew.
void drop_crumbs(StoneRegions& regions, int seeds) {
  std::vector<int> pixels(place(seeds) + 1, 0);
  for (const int stone : regions.stone) ++pixels[place(stone)];
  std::vector<int> renamed(pixels.size(), 0);
  for (std::size_t i = 1; i < pixels.size(); ++i) {
    if (pixels[i] >= least_pixels) renamed[i] = ++regions.stones;
  }
  for (int& stone : regions.stone) stone = renamed[place(stone)];
}

}  // namespace

StoneRegions stone_regions(const OutlineMaps& maps) {
  const PixelGrid grid(maps.width, maps.height);
  const auto depth = smoothed(maps.depth, maps.width, maps.height);
  std::vector<int> levels(grid.count(), -1);
  std::vector<int> costs(grid.count(), -1);
  for (std::size_t i = 0; i < grid.count(); ++i) {
    if (maps.rock[i] < least_rock) continue;
    levels[i] = step_of(depth[i]);
    const double cost =
        1 - static_cast<double>(depth[i]) + edge_counts * static_cast<double>(maps.edge[i]);
    costs[i] = std::clamp(static_cast<int>(std::lround(cost * (steps - 1))), 0, 2 * steps - 1);
  }
  const auto seeds = Summits(levels, grid).standing_out_by(step_of(standing_out));
  StoneRegions regions{maps.width, maps.height, 0, std::vector<int>(grid.count(), 0)};
  flood(costs, seeds, grid, regions.stone);
  drop_crumbs(regions, static_cast<int>(seeds.size()));
  return regions;
}

}  // namespace proofstone
