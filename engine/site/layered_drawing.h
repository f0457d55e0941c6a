#pragma once

#include <string>
#include <vector>

namespace proofstone {

/// A place on a drawing, in the drawing's own unit of length: to the right, and upward.
struct DrawingPlace {
  double x = 0;
  double y = 0;
};

/// A line or the outline of an area on a named layer.
struct LayeredLine {
  std::string layer;
  bool closed = false;
  std::vector<DrawingPlace> points;
};

/// A word on a named layer, its lower left corner at a place.
struct LayeredText {
  std::string layer;
  DrawingPlace at;
  double height = 0;
  std::string text;
};

/// A drawing as neutral lines and words, which files of drawing programs are written from.
struct LayeredDrawing {
  std::string title;
  std::string unit;  ///< "ft" or "m"
  std::vector<LayeredLine> lines;
  std::vector<LayeredText> texts;
};

}  // namespace proofstone
