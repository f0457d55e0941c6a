#include "piles/outline_form.h"

#include <algorithm>
#include <cmath>

namespace proofstone::piles {
namespace {

/// Twice the area of the triangle, positive where it turns from x to y.
double turn(PhotoPoint from, PhotoPoint over, PhotoPoint to) {
  return (over.x - from.x) * (to.y - from.y) - (over.y - from.y) * (to.x - from.x);
}

/// The corners of the hull in turn, none of them on a straight line of others.
std::vector<PhotoPoint> hull_of(std::vector<PhotoPoint> points) {
  std::sort(points.begin(), points.end(), [](PhotoPoint one, PhotoPoint other) {
    return one.x < other.x || (!(other.x < one.x) && one.y < other.y);
  });
  std::vector<PhotoPoint> hull;
  const auto add_side = [&hull](const auto begin, const auto end) {
    const std::size_t start = hull.size();
    for (auto point = begin; point != end; ++point) {
      while (hull.size() >= start + 2 && turn(hull[hull.size() - 2], hull.back(), *point) <= 0) {
        hull.pop_back();
      }
      hull.push_back(*point);
    }
    hull.pop_back();
  };
  add_side(points.begin(), points.end());
  add_side(points.rbegin(), points.rend());
  return hull;
}

struct Box {
  double along = 0;
  double across = 0;
};

/// The box with one side along the edge from `from` to `to`.
Box box_along(const std::vector<PhotoPoint>& hull, PhotoPoint from, PhotoPoint to) {
  const double length = pixels_between(from, to);
  const double x = (to.x - from.x) / length;
  const double y = (to.y - from.y) / length;
  double first = 0;
  double last = 0;
  double deepest = 0;
  for (const auto point : hull) {
    const double along = (point.x - from.x) * x + (point.y - from.y) * y;
    first = std::min(first, along);
    last = std::max(last, along);
    deepest = std::max(deepest, std::abs((point.y - from.y) * x - (point.x - from.x) * y));
  }
  return {last - first, deepest};
}

double area_of(const std::vector<PhotoPoint>& hull) {
  double twice = 0;
  for (std::size_t i = 1; i + 1 < hull.size(); ++i) twice += turn(hull[0], hull[i], hull[i + 1]);
  return std::abs(twice) / 2;
}

}  // namespace

OutlineForm form_of_outline(const std::vector<PhotoPoint>& outline, double area) {
  const auto hull = hull_of(outline);
  // The tightest box has a side along an edge of the hull (Freeman & Shapira 1975, from memory).
  Box tightest = box_along(hull, hull[0], hull[1]);
  for (std::size_t i = 1; i < hull.size(); ++i) {
    const Box box = box_along(hull, hull[i], hull[(i + 1) % hull.size()]);
    if (box.along * box.across < tightest.along * tightest.across) tightest = box;
  }
  OutlineForm form;
  form.box_fill = std::min(1.0, area / (tightest.along * tightest.across));
  form.elongation = std::abs(std::log(tightest.along / tightest.across));
  form.solidity = std::min(1.0, area / area_of(hull));
  return form;
}

}  // namespace proofstone::piles
