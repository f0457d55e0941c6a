#include "engine/vision/picture_geometry.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace proofstone {
namespace {

constexpr std::size_t most_corners = 2000;
constexpr double rounding = 0.5;  // pixels
constexpr double near_edge = 1;   // pixels

bool is_finite(PhotoPoint point) { return std::isfinite(point.x) && std::isfinite(point.y); }

bool same_place(PhotoPoint one, PhotoPoint other) { return pixels_between(one, other) < 1e-9; }

void drop_repeated_corners(std::vector<PhotoPoint>& outline) {
  outline.erase(std::unique(outline.begin(), outline.end(), same_place), outline.end());
  while (outline.size() > 1 && same_place(outline.front(), outline.back())) outline.pop_back();
}

/// On which side of the line from `a` to `b` a point lies: the sign of twice the triangle's area.
double side(PhotoPoint a, PhotoPoint b, PhotoPoint point) {
  return (b.x - a.x) * (point.y - a.y) - (b.y - a.y) * (point.x - a.x);
}

bool opposite(double one, double other) { return (one > 0 && other < 0) || (one < 0 && other > 0); }

/// Whether two edges cross within both; to touch is not to cross.
bool cross(PhotoPoint a, PhotoPoint b, PhotoPoint c, PhotoPoint d) {
  if (std::max(a.x, b.x) < std::min(c.x, d.x) || std::max(c.x, d.x) < std::min(a.x, b.x) ||
      std::max(a.y, b.y) < std::min(c.y, d.y) || std::max(c.y, d.y) < std::min(a.y, b.y)) {
    return false;
  }
  return opposite(side(a, b, c), side(a, b, d)) && opposite(side(c, d, a), side(c, d, b));
}

bool crosses_itself(const std::vector<PhotoPoint>& outline) {
  const std::size_t n = outline.size();
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = i + 2; j < n; ++j) {
      if (i == 0 && j + 1 == n) continue;
      if (cross(outline[i], outline[(i + 1) % n], outline[j], outline[(j + 1) % n])) return true;
    }
  }
  return false;
}

VisiblePiece enclosed(const std::vector<PhotoPoint>& outline) {
  // From the first corner, so that far from the picture's corner nothing is lost in rounding.
  const PhotoPoint from = outline.front();
  VisiblePiece piece;
  piece.box = box_round(outline);
  double twice = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    twice += side(from, outline[i], outline[(i + 1) % outline.size()]);
  }
  piece.area = std::abs(twice) / 2;
  return piece;
}

}  // namespace

double PictureSize::diagonal() const { return std::sqrt(width * width + height * height); }

void PhotoBox::take_in(PhotoPoint place) {
  left = std::min(left, place.x);
  right = std::max(right, place.x);
  top = std::min(top, place.y);
  bottom = std::max(bottom, place.y);
}

PhotoBox box_round(const std::vector<PhotoPoint>& places) {
  const auto& first = places.front();
  PhotoBox box{first.x, first.y, first.x, first.y};
  for (const auto& place : places) box.take_in(place);
  return box;
}

bool is_on_picture(PhotoPoint place, const PictureSize& picture) {
  // No comparison holds for what is not a number.
  return place.x >= 0 && place.y >= 0 && place.x <= picture.width && place.y <= picture.height;
}

double pixels_between(PhotoPoint one, PhotoPoint other) {
  const double x = one.x - other.x;
  const double y = one.y - other.y;
  return std::sqrt(x * x + y * y);
}

Expected<VisiblePiece> piece_of_outline(std::vector<PhotoPoint> outline, const std::string& where) {
  if (!std::all_of(outline.begin(), outline.end(), is_finite)) {
    return Problem{"not-a-number", "A corner of the outline is not a number.", "", where,
                   "x and y in pixels"};
  }
  drop_repeated_corners(outline);
  if (outline.size() < 3 || outline.size() > most_corners) {
    return Problem{"no-outline", fmt::format("The outline has {} corners.", outline.size()), "",
                   where, fmt::format("3 to {} corners", most_corners)};
  }
  if (crosses_itself(outline)) {
    return Problem{"crosses-itself", "The outline crosses itself, so it encloses no one area.", "",
                   where, "an outline that goes once round the stone"};
  }
  const auto piece = enclosed(outline);
  if (!(piece.area > 0)) {
    return Problem{"no-area", "The outline encloses nothing.", "", where,
                   "an outline that goes once round the stone"};
  }
  return piece;
}

Problems problems_of_piece(const VisiblePiece& piece, const PictureSize& picture,
                           const std::string& where) {
  const auto& box = piece.box;
  const double all[] = {piece.area, box.left, box.top, box.right, box.bottom};
  if (!std::all_of(std::begin(all), std::end(all), [](double v) { return std::isfinite(v); })) {
    return {{"not-a-number", "Its area or box is not a number.", "", where, "numbers in pixels"}};
  }
  Problems problems;
  if (!(piece.area > 0) || !(box.width() > 0 && box.height() > 0) ||
      piece.area > box.width() * box.height() * (1 + 1e-9)) {
    problems.push_back({"no-area", "Its area is not above 0, or its box cannot hold it.", "", where,
                        "an area up to that of the box, left of right and top above bottom"});
  }
  if (box.left < -rounding || box.top < -rounding || box.right > picture.width + rounding ||
      box.bottom > picture.height + rounding) {
    problems.push_back(
        {"outside-picture", "It reaches beyond the picture.", "", where,
         fmt::format("x from 0 to {:g}, y from 0 to {:g}", picture.width, picture.height)});
  }
  return problems;
}

bool is_cut_by_edge(const VisiblePiece& piece, const PictureSize& picture) {
  const auto& box = piece.box;
  return box.left <= near_edge || box.top <= near_edge || box.right >= picture.width - near_edge ||
         box.bottom >= picture.height - near_edge;
}

bool encloses(const std::vector<PhotoPoint>& outline, PhotoPoint place) {
  bool inside = false;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const PhotoPoint a = outline[i];
    const PhotoPoint b = outline[(i + 1) % outline.size()];
    if ((a.y <= place.y) == (b.y <= place.y)) continue;
    if (a.x + (place.y - a.y) / (b.y - a.y) * (b.x - a.x) > place.x) inside = !inside;
  }
  return inside;
}

std::vector<PhotoPoint> convex_hull(std::vector<PhotoPoint> points) {
  std::sort(points.begin(), points.end(), [](PhotoPoint one, PhotoPoint other) {
    return one.x < other.x || (!(other.x < one.x) && one.y < other.y);
  });
  std::vector<PhotoPoint> hull;
  for (const bool back : {false, true}) {
    const std::size_t fewest = hull.size() + 1;
    for (const auto& point : points) {
      while (hull.size() > fewest && side(hull[hull.size() - 2], hull.back(), point) <= 0) {
        hull.pop_back();
      }
      hull.push_back(point);
    }
    if (!hull.empty()) hull.pop_back();
    if (!back) std::reverse(points.begin(), points.end());
  }
  return hull;
}

RectangleSides tightest_rectangle(std::vector<PhotoPoint> outline) {
  // One of its sides lies along the convex hull.
  const auto hull = convex_hull(std::move(outline));
  RectangleSides best;
  double least = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < hull.size() && hull.size() > 2; ++i) {
    const PhotoPoint a = hull[i];
    const PhotoPoint b = hull[(i + 1) % hull.size()];
    const double edge = pixels_between(a, b);
    double from = 0;
    double to = 0;
    double across = 0;
    for (const auto& point : hull) {
      const double along = ((b.x - a.x) * (point.x - a.x) + (b.y - a.y) * (point.y - a.y)) / edge;
      from = std::min(from, along);
      to = std::max(to, along);
      across = std::max(across, std::abs(side(a, b, point)) / edge);
    }
    if ((to - from) * across >= least) continue;
    least = (to - from) * across;
    best = {std::max(to - from, across), std::min(to - from, across)};
  }
  return best;
}

double equal_area_diameter(double area) { return 2 * std::sqrt(area / std::numbers::pi); }

double edge_weight(const VisiblePiece& piece, const PictureSize& picture) {
  return 1 / ((1 - piece.box.width() / picture.width) * (1 - piece.box.height() / picture.height));
}

}  // namespace proofstone
