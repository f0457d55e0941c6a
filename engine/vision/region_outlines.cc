#include <algorithm>
#include <array>

#include "engine/vision/stone_regions.h"

namespace proofstone {
namespace {

/// A step from one corner of a pixel to the next.
struct WayAlong {
  int x = 1;
  int y = 0;
  WayAlong right() const { return {-y, x}; }
  WayAlong left() const { return {y, -x}; }
  bool operator==(const WayAlong&) const = default;
};

/// Walks round one stone along the sides of its pixels, the stone on the right.
class Walk {
 public:
  Walk(const StoneRegions& regions, int pixel)
      : regions_(regions),
        stone_(regions.stone[static_cast<std::size_t>(pixel)]),
        start_x_(pixel % regions.width),
        start_y_(pixel / regions.width) {}

  /// Starts at the upper left corner of the stone's first pixel.
  std::vector<PhotoPoint> round() const {
    std::vector<PhotoPoint> points;
    int x = start_x_;
    int y = start_y_;
    WayAlong way;
    do {
      points.push_back({x + way.x / 2.0, y + way.y / 2.0});
      x += way.x;
      y += way.y;
      if (!inside(x, y, way, false)) {
        way = way.right();
      } else if (inside(x, y, way, true)) {
        way = way.left();
      }
    } while (x != start_x_ || y != start_y_ || !(way == WayAlong{}));
    return points;
  }

 private:
  /// Whether the pixel before a corner, to the left or to the right of the way, is of the stone.
  bool inside(int x, int y, WayAlong way, bool left) const {
    const WayAlong aside = left ? way.left() : way.right();
    // The pixel's middle lies half a step along the way and half a step aside.
    const int column = x + (way.x + aside.x - 1) / 2;
    const int row = y + (way.y + aside.y - 1) / 2;
    if (column < 0 || row < 0 || column >= regions_.width || row >= regions_.height) return false;
    return regions_.stone[static_cast<std::size_t>(row) * static_cast<std::size_t>(regions_.width) +
                          static_cast<std::size_t>(column)] == stone_;
  }

  const StoneRegions& regions_;
  int stone_;
  int start_x_;
  int start_y_;
};

double away_from_line(PhotoPoint from, PhotoPoint to, PhotoPoint point) {
  const double length = pixels_between(from, to);
  if (length == 0) return pixels_between(from, point);
  const double twice = (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x);
  return std::abs(twice) / length;
}

/// Keeps of the points between two kept ones those without which the line would be off by more.
void keep_between(const std::vector<PhotoPoint>& points, std::size_t first, std::size_t last,
                  double tolerance, std::vector<bool>& kept) {
  std::vector<std::array<std::size_t, 2>> parts{{first, last}};
  while (!parts.empty()) {
    const auto [from, to] = parts.back();
    parts.pop_back();
    double farthest = tolerance;
    std::size_t where = from;
    for (std::size_t i = from + 1; i < to; ++i) {
      const double away = away_from_line(points[from], points[to % points.size()], points[i]);
      if (away <= farthest) continue;
      farthest = away;
      where = i;
    }
    if (where == from) continue;
    kept[where] = true;
    parts.push_back({from, where});
    parts.push_back({where, to});
  }
}

std::vector<PhotoPoint> straightened(const std::vector<PhotoPoint>& points, double tolerance) {
  std::size_t opposite = 0;
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (pixels_between(points[0], points[i]) > pixels_between(points[0], points[opposite])) {
      opposite = i;
    }
  }
  std::vector<bool> kept(points.size(), false);
  kept[0] = kept[opposite] = true;
  keep_between(points, 0, opposite, tolerance, kept);
  keep_between(points, opposite, points.size(), tolerance, kept);
  std::vector<PhotoPoint> result;
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (kept[i]) result.push_back(points[i]);
  }
  return result;
}

}  // namespace

std::vector<std::vector<PhotoPoint>> outlines_of(const StoneRegions& regions) {
  std::vector<bool> walked(static_cast<std::size_t>(regions.stones) + 1, false);
  walked[0] = true;
  std::vector<std::vector<PhotoPoint>> outlines;
  for (std::size_t i = 0; i < regions.stone.size(); ++i) {
    const auto stone = static_cast<std::size_t>(regions.stone[i]);
    if (walked[stone]) continue;
    walked[stone] = true;
    const auto points = Walk(regions, static_cast<int>(i)).round();
    for (const double tolerance : {0.5, 0.25, 0.0}) {
      auto outline = straightened(points, tolerance);
      if (!piece_of_outline(outline, "")) continue;
      outlines.push_back(std::move(outline));
      break;
    }
  }
  return outlines;
}

}  // namespace proofstone
