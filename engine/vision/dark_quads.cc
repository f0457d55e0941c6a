#include "engine/vision/dark_quads.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <optional>
#include <utility>

namespace proofstone {
namespace {

constexpr double least_side_of_quad = 18;  // pixels
constexpr int around = 24;                 // pixels all round with which a pixel is compared
constexpr int darker_by = 8;               // of 255

double cross(PhotoPoint o, PhotoPoint a, PhotoPoint b) {
  return (a.x - o.x) * (b.y - o.y) - (a.y - o.y) * (b.x - o.x);
}

double area_of(const std::vector<PhotoPoint>& corners) {
  double twice = 0;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const auto& a = corners[i];
    const auto& b = corners[(i + 1) % corners.size()];
    twice += a.x * b.y - b.x * a.y;
  }
  return std::abs(twice) / 2;
}

/// Convex hull, clockwise on the picture (Andrew's monotone chain).
std::vector<PhotoPoint> hull_of(std::vector<PhotoPoint> points) {
  std::sort(points.begin(), points.end(), [](PhotoPoint a, PhotoPoint b) {
    return a.x < b.x || (std::abs(a.x - b.x) <= 0 && a.y < b.y);
  });
  std::vector<PhotoPoint> hull;
  const auto extend = [&hull](PhotoPoint point, std::size_t floor) {
    while (hull.size() >= floor + 2 && cross(hull[hull.size() - 2], hull.back(), point) <= 0) {
      hull.pop_back();
    }
    hull.push_back(point);
  };
  for (const auto& point : points) extend(point, 0);
  const std::size_t lower = hull.size() - 1;
  for (std::size_t i = points.size() - 1; i-- > 0;) extend(points[i], lower);
  hull.pop_back();
  return hull;
}

/// The four corners of a hull that is nearly a quad: those that are farthest from what is there.
std::optional<Quad> quad_in(const std::vector<PhotoPoint>& hull) {
  if (hull.size() < 4) return std::nullopt;
  PhotoPoint middle{0, 0};
  for (const auto& point : hull) {
    middle.x += point.x / static_cast<double>(hull.size());
    middle.y += point.y / static_cast<double>(hull.size());
  }
  const auto farthest_from = [&hull](PhotoPoint from) {
    return *std::max_element(hull.begin(), hull.end(), [&](PhotoPoint a, PhotoPoint b) {
      return pixels_between(a, from) < pixels_between(b, from);
    });
  };
  const auto first = farthest_from(middle);
  const auto third = farthest_from(first);
  const auto by_side = [&](PhotoPoint a, PhotoPoint b) {
    return cross(first, third, a) < cross(first, third, b);
  };
  const auto [left, right] = std::minmax_element(hull.begin(), hull.end(), by_side);
  // Clockwise with y down: the cross product of successive sides is positive.
  const Quad quad = {first, *left, third, *right};
  const double area = area_of({quad.begin(), quad.end()});
  constexpr double least_filled = 0.88;
  if (area < least_filled * area_of(hull)) return std::nullopt;
  for (std::size_t i = 0; i < 4; ++i) {
    if (pixels_between(quad[i], quad[(i + 1) % 4]) < least_side_of_quad) return std::nullopt;
    if (cross(quad[i], quad[(i + 1) % 4], quad[(i + 2) % 4]) <= 0) return std::nullopt;
  }
  return quad;
}

/// One patch of dark pixels: the first and last pixel of each of its rows, which is all its hull
/// needs.
struct Patch {
  int top = 0;
  std::vector<std::pair<int, int>> rows;
  int pixels = 0;
  bool at_edge = false;
};

/// Patches of dark pixels that touch along a side.
class Patches {
 public:
  Patches(const GreyPicture& picture, std::vector<std::uint8_t> dark)
      : width_(picture.width), height_(picture.height), dark_(std::move(dark)) {}

  /// Calls `take(patch)` for each.
  template <class Take>
  void each(Take take) {
    for (int y = 0; y < height_; ++y) {
      for (int x = 0; x < width_; ++x) {
        if (dark_[at(x, y)] == 1) take(collect(x, y));
      }
    }
  }

 private:
  std::size_t at(int x, int y) const {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(width_) +
           static_cast<std::size_t>(x);
  }
  Patch collect(int x, int y) {
    Patch patch;
    patch.top = y;
    waiting_.assign(1, {x, y});
    dark_[at(x, y)] = 0;
    while (!waiting_.empty()) {
      const auto [px, py] = waiting_.back();
      waiting_.pop_back();
      note(patch, px, py);
      visit(px - 1, py);
      visit(px + 1, py);
      visit(px, py - 1);
      visit(px, py + 1);
    }
    return patch;
  }
  void note(Patch& patch, int x, int y) {
    ++patch.pixels;
    if (x == 0 || y == 0 || x == width_ - 1 || y == height_ - 1) patch.at_edge = true;
    // The scan meets the top row of a patch first.
    const auto row = static_cast<std::size_t>(y - patch.top);
    if (row >= patch.rows.size()) patch.rows.resize(row + 1, {width_, -1});
    patch.rows[row].first = std::min(patch.rows[row].first, x);
    patch.rows[row].second = std::max(patch.rows[row].second, x);
  }
  void visit(int x, int y) {
    if (x < 0 || y < 0 || x >= width_ || y >= height_ || dark_[at(x, y)] != 1) return;
    dark_[at(x, y)] = 0;
    waiting_.emplace_back(x, y);
  }

  int width_;
  int height_;
  std::vector<std::uint8_t> dark_;
  std::vector<std::pair<int, int>> waiting_;
};

/// Outer corners of the pixels at both ends of each row.
std::vector<PhotoPoint> rim_of(const Patch& patch) {
  std::vector<PhotoPoint> rim;
  for (std::size_t row = 0; row < patch.rows.size(); ++row) {
    const auto [left, right] = patch.rows[row];
    const double y = patch.top + static_cast<double>(row);
    for (const double edge : {y, y + 1}) {
      rim.push_back({static_cast<double>(left), edge});
      rim.push_back({right + 1.0, edge});
    }
  }
  return rim;
}

struct Line {
  PhotoPoint through;
  double along_x = 1;
  double along_y = 0;
};

/// Least squares of the distances from the line.
Line line_through(const std::vector<PhotoPoint>& points) {
  const auto n = static_cast<double>(points.size());
  PhotoPoint middle{0, 0};
  for (const auto& point : points) {
    middle.x += point.x / n;
    middle.y += point.y / n;
  }
  double xx = 0;
  double xy = 0;
  double yy = 0;
  for (const auto& point : points) {
    xx += (point.x - middle.x) * (point.x - middle.x);
    xy += (point.x - middle.x) * (point.y - middle.y);
    yy += (point.y - middle.y) * (point.y - middle.y);
  }
  const double angle = std::atan2(2 * xy, xx - yy) / 2;
  return {middle, std::cos(angle), std::sin(angle)};
}

double distance(const Line& line, PhotoPoint point) {
  return std::abs((point.x - line.through.x) * line.along_y -
                  (point.y - line.through.y) * line.along_x);
}

std::optional<PhotoPoint> crossing(const Line& one, const Line& other) {
  const double across = one.along_x * other.along_y - one.along_y * other.along_x;
  if (std::abs(across) < 1e-6) return std::nullopt;
  const double dx = other.through.x - one.through.x;
  const double dy = other.through.y - one.through.y;
  const double t = (dx * other.along_y - dy * other.along_x) / across;
  return PhotoPoint{one.through.x + t * one.along_x, one.through.y + t * one.along_y};
}

/// Where the picture turns from dark to light most steeply on the way outwards through `at`.
std::optional<PhotoPoint> edge_near(const GreyPicture& picture, PhotoPoint at, double out_x,
                                    double out_y, double reach) {
  constexpr double step = 0.25;
  const int steps = static_cast<int>(std::ceil(reach / step));
  const auto rise_at = [&](int k) {
    const double t = k * step;
    return picture.between(at.x + (t + 0.75) * out_x, at.y + (t + 0.75) * out_y) -
           picture.between(at.x + (t - 0.75) * out_x, at.y + (t - 0.75) * out_y);
  };
  // The middle of what rises: steadier than the steepest place alone.
  double weight = 0;
  double sum = 0;
  double steepest = 0;
  for (int k = -steps; k <= steps; ++k) steepest = std::max(steepest, rise_at(k));
  constexpr double least_rise = 12;
  if (steepest < least_rise) return std::nullopt;
  for (int k = -steps; k <= steps; ++k) {
    const double rise = rise_at(k);
    if (rise < steepest / 2) continue;
    weight += rise;
    sum += rise * k * step;
  }
  return PhotoPoint{at.x + sum / weight * out_x, at.y + sum / weight * out_y};
}

/// The side from one corner to the next, as the picture shows it.
std::optional<Line> side_of(const GreyPicture& picture, PhotoPoint from, PhotoPoint to,
                            double reach) {
  const double length = pixels_between(from, to);
  // Clockwise with y down, outwards is to the left of the way.
  const double out_x = (to.y - from.y) / length;
  const double out_y = -(to.x - from.x) / length;
  std::vector<PhotoPoint> points;
  const int samples = std::clamp(static_cast<int>(length / 2), 12, 200);
  for (int i = 0; i < samples; ++i) {
    // The corners are rounded by blur.
    const double share = 0.12 + 0.76 * (i + 0.5) / samples;
    const PhotoPoint at{from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)};
    if (const auto edge = edge_near(picture, at, out_x, out_y, reach)) points.push_back(*edge);
  }
  if (static_cast<int>(points.size()) < samples / 2) return std::nullopt;
  auto line = line_through(points);
  std::vector<double> off;
  off.reserve(points.size());
  for (const auto& point : points) off.push_back(distance(line, point));
  auto ordered = off;
  const auto middle = ordered.begin() + static_cast<std::ptrdiff_t>(ordered.size() / 2);
  std::nth_element(ordered.begin(), middle, ordered.end());
  const double most = std::max(0.3, 3 * *middle);
  std::vector<PhotoPoint> kept;
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (off[i] <= most) kept.push_back(points[i]);
  }
  return kept.size() >= 6 ? line_through(kept) : line;
}

}  // namespace

std::vector<Quad> dark_quads(const GreyPicture& picture) {
  std::vector<Quad> quads;
  if (picture.width < 2 * around || picture.height < 2 * around) return quads;
  Patches(picture, darker_than_around(picture, around, darker_by)).each([&](const Patch& patch) {
    constexpr int least_pixels = 60;
    if (patch.at_edge || patch.pixels < least_pixels ||
        static_cast<double>(patch.rows.size()) < least_side_of_quad / 2) {
      return;
    }
    if (const auto quad = quad_in(hull_of(rim_of(patch)))) quads.push_back(*quad);
  });
  return quads;
}

Quad refined(const Quad& quad, const GreyPicture& picture, double reach) {
  std::array<std::optional<Line>, 4> sides;
  for (std::size_t i = 0; i < 4; ++i) {
    sides[i] = side_of(picture, quad[i], quad[(i + 1) % 4], reach);
  }
  Quad better = quad;
  for (std::size_t i = 0; i < 4; ++i) {
    const auto& before = sides[(i + 3) % 4];
    const auto& after = sides[i];
    if (!before || !after) continue;
    const auto corner = crossing(*before, *after);
    if (corner && pixels_between(*corner, quad[i]) < 3 * reach) better[i] = *corner;
  }
  return better;
}

}  // namespace proofstone
