#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "report/ink.h"

namespace proofstone {

/// A place on a picture, in pixels, y downward.
struct PixelPoint {
  double x = 0;
  double y = 0;
};

/// How a shape is painted.
struct Paint {
  Ink fill = Ink::none;
  double fill_opacity = 1;
  Ink stroke = Ink::none;
  double stroke_width = 1;
  std::string_view dash = {};  ///< as stroke-dasharray
  std::string_view css_class = {};
};

enum class TextAnchor { start, middle, end };

struct TextStyle {
  double size = 12;
  TextAnchor anchor = TextAnchor::start;
  Ink ink = Ink::ink;
  bool bold = false;
  bool halo = false;  ///< paper round the letters, for text over lines
  std::string_view css_class = {};
};

/// A number as pictures write it: at most two decimals, no exponent, no "-0", the same text on
/// every machine. What is not finite is written as 0 and must be kept out earlier.
std::string svg_number(double value);

/// Path data through points: "M1 2L3 4"; closed with Z when asked.
std::string path_through(const std::vector<PixelPoint>& points, bool closed);

/// Writes one SVG picture. All text is escaped; every colour is an Ink; every id starts with the id
/// of the picture, so that several pictures can stand in one page.
class SvgCanvas {
 public:
  SvgCanvas(const std::string& id, double width);

  double width() const { return width_; }

  void line(PixelPoint from, PixelPoint to, const Paint& paint);
  void path(const std::string& data, const Paint& paint);
  void polyline(const std::vector<PixelPoint>& points, const Paint& paint);
  void polygon(const std::vector<PixelPoint>& points, const Paint& paint);
  void rectangle(PixelPoint corner, double width, double height, const Paint& paint);
  void circle(PixelPoint centre, double radius, const Paint& paint);
  void text(PixelPoint baseline, std::string_view text, const TextStyle& style);

  /// Everything up to end_group belongs together.
  void begin_group(std::string_view css_class);
  /// As begin_group; what lies outside the area is not drawn.
  void begin_clipped_group(std::string_view css_class, const std::vector<PixelPoint>& area);
  /// As begin_group, moved and scaled.
  void begin_placed_group(std::string_view css_class, PixelPoint origin, double scale);
  void end_group();

  /// What is drawn so far, without the picture round it.
  const std::string& content() const { return body_; }

  /// The whole picture. `title` and `description` are what a screen reader says.
  std::string finish(double height, std::string_view css_class, std::string_view title,
                     std::string_view description) const;

 private:
  std::string id_;
  double width_;
  std::string definitions_;
  std::string body_;
  int clips_ = 0;
};

}  // namespace proofstone
