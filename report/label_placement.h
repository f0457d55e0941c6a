#pragma once

#include <optional>
#include <vector>

#include "report/svg_canvas.h"

namespace proofstone {

/// A rectangle of a picture, in pixels.
struct PixelBox {
  double left = 0;
  double top = 0;
  double right = 0;
  double bottom = 0;

  bool overlaps(const PixelBox& other) const {
    return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
  }
  bool holds(const PixelBox& other) const {
    return left <= other.left && top <= other.top && right >= other.right && bottom >= other.bottom;
  }
};

/// From the upper left, clockwise.
std::vector<PixelPoint> corners_of(const PixelBox& box);

/// Where the text of `width` × `font_size` stands when its baseline is anchored at a point.
PixelBox text_box(PixelPoint baseline, double width, double font_size, TextAnchor anchor);

/// A place a label could take.
struct LabelPlace {
  PixelPoint baseline;
  TextAnchor anchor = TextAnchor::start;
};

/// Keeps labels from one another, from lines and from the edge: knows what is taken, and gives a
/// label the first of its places that is free.
class LabelPlacement {
 public:
  explicit LabelPlacement(PixelBox room) : room_(room) {}

  void take(const PixelBox& box) { taken_.push_back(box); }
  /// Takes the boxes that a line of some thickness passes through.
  void take_line(const std::vector<PixelPoint>& points, double thickness);

  /// The first free place for a text, which is then taken; nothing when all are obstructed.
  std::optional<LabelPlace> place(double width, double font_size,
                                  const std::vector<LabelPlace>& candidates);
  bool is_free(const PixelBox& box) const;
  /// Whether it lies in the room, taken or not.
  bool holds(const PixelBox& box) const { return room_.holds(box); }

 private:
  PixelBox room_;
  std::vector<PixelBox> taken_;
};

}  // namespace proofstone
