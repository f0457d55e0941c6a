#include "report/label_placement.h"

#include <algorithm>
#include <cmath>

namespace proofstone {

std::vector<PixelPoint> corners_of(const PixelBox& box) {
  return {
      {box.left, box.top}, {box.right, box.top}, {box.right, box.bottom}, {box.left, box.bottom}};
}

PixelBox text_box(PixelPoint baseline, double width, double font_size, TextAnchor anchor) {
  double left = baseline.x;
  if (anchor == TextAnchor::middle) left -= width / 2;
  if (anchor == TextAnchor::end) left -= width;
  return {left, baseline.y - 0.8 * font_size, left + width, baseline.y + 0.25 * font_size};
}

void LabelPlacement::take_line(const std::vector<PixelPoint>& points, double thickness) {
  constexpr double step = 6;
  constexpr int most_pieces = 1000;
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    const PixelPoint from = points[i];
    const PixelPoint to = points[i + 1];
    const double length =
        std::sqrt((to.x - from.x) * (to.x - from.x) + (to.y - from.y) * (to.y - from.y));
    // A line far outside the picture may be of any length: compared before it becomes a whole
    // number.
    const int pieces =
        length < most_pieces * step ? std::max(1, static_cast<int>(length / step)) : most_pieces;
    for (int k = 0; k < pieces; ++k) {
      const double a = static_cast<double>(k) / pieces;
      const double b = static_cast<double>(k + 1) / pieces;
      const double x1 = from.x + a * (to.x - from.x);
      const double x2 = from.x + b * (to.x - from.x);
      const double y1 = from.y + a * (to.y - from.y);
      const double y2 = from.y + b * (to.y - from.y);
      take({std::min(x1, x2) - thickness / 2, std::min(y1, y2) - thickness / 2,
            std::max(x1, x2) + thickness / 2, std::max(y1, y2) + thickness / 2});
    }
  }
}

bool LabelPlacement::is_free(const PixelBox& box) const {
  return room_.holds(box) && std::none_of(taken_.begin(), taken_.end(), [&](const PixelBox& other) {
           return other.overlaps(box);
         });
}

std::optional<LabelPlace> LabelPlacement::place(double width, double font_size,
                                                const std::vector<LabelPlace>& candidates) {
  for (const auto& candidate : candidates) {
    const auto box = text_box(candidate.baseline, width, font_size, candidate.anchor);
    if (!is_free(box)) continue;
    take(box);
    return candidate;
  }
  return std::nullopt;
}

}  // namespace proofstone
