#include "report/filter_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/label_placement.h"
#include "report/picture_legend.h"
#include "report/picture_style.h"
#include "report/text_width.h"

namespace proofstone {
namespace {

/// Where sizes, in millimetres, and percents lie on the picture.
struct FilterAxes {
  double left = 0;
  double right = 0;
  double top = 0;
  double bottom = 0;
  double smallest = 0.001;
  double largest = 1000;

  double x(double size) const {
    const double share = std::log(size / smallest) / std::log(largest / smallest);
    return left + std::clamp(share, 0.0, 1.0) * (right - left);
  }
  double y(double percent) const {
    return bottom - std::clamp(percent, 0.0, 100.0) / 100 * (bottom - top);
  }
};

bool can_be_drawn(Length size, double percent) {
  return std::isfinite(size.si()) && size.si() > 0 && std::isfinite(percent);
}

std::vector<PixelPoint> line_of(const std::vector<GradationPoint>& points, const FilterAxes& axes) {
  std::vector<PixelPoint> line;
  for (const auto& point : points) {
    if (!can_be_drawn(point.size, point.percent_smaller)) continue;
    line.push_back({axes.x(point.size.millimeters()), axes.y(point.percent_smaller)});
  }
  return line;
}

/// Whole decades round everything that is drawn.
void set_decades(FilterAxes& axes, const FilterPicture& picture) {
  std::vector<double> sizes;
  const auto add = [&](Length size) {
    if (can_be_drawn(size, 0)) sizes.push_back(size.millimeters());
  };
  for (const auto& layer : picture.layers) {
    for (const auto& point : layer.coarse) add(point.size);
    for (const auto& point : layer.fine) add(point.size);
  }
  for (const auto& point : picture.control_points) add(point.size);
  if (picture.fabric_opening) add(*picture.fabric_opening);
  if (sizes.empty()) return;
  const auto [low, high] = std::minmax_element(sizes.begin(), sizes.end());
  axes.smallest = std::pow(10, std::floor(std::log10(*low)));
  axes.largest = std::pow(10, std::ceil(std::log10(*high)));
  if (axes.largest < 10 * axes.smallest) axes.largest = 10 * axes.smallest;
}

/// A size that people know, with its name.
struct KnownSize {
  double size;  ///< mm
  std::string label;
};

std::vector<KnownSize> known_sizes(const FilterAxes& axes, UnitSystem units) {
  std::vector<KnownSize> all;
  if (units == UnitSystem::us_customary) {
    all = {{0.002, "0.002 mm"}, {0.075, "No. 200"}, {0.425, "No. 40"}, {4.75, "No. 4"},
           {19.05, "3/4 in"},   {76.2, "3 in"},     {304.8, "12 in"},  {914.4, "36 in"}};
  } else {
    for (int decade = -6; decade <= 6; ++decade) {
      const double size = std::pow(10, decade);
      all.push_back({size, fmt::format("{:g}", size)});
    }
  }
  std::erase_if(all, [&](const KnownSize& known) {
    return known.size < axes.smallest * (1 - 1e-9) || known.size > axes.largest * (1 + 1e-9);
  });
  return all;
}

void draw_filter_axes(SvgCanvas& canvas, const FilterAxes& axes, UnitSystem units) {
  const TextStyle quiet{font_size, TextAnchor::end, Ink::muted, false, false, {}};
  for (const double percent : {0.0, 15.0, 50.0, 85.0, 100.0}) {
    const double y = axes.y(percent);
    canvas.line({axes.left, y}, {axes.right, y},
                {Ink::none, 1, Ink::line, percent > 0 ? 1 : 1.5, {}, "grid"});
    canvas.text({axes.left - 6, y + 4.5}, fmt::format("{}", percent), quiet);
  }
  canvas.text({axes.left - 34, axes.top - 14}, "Percent smaller by mass",
              {font_size, TextAnchor::start, Ink::muted, false, false, {}});
  LabelPlacement labels({0, axes.bottom, canvas.width(), axes.bottom + 24});
  for (const auto& known : known_sizes(axes, units)) {
    const double x = axes.x(known.size);
    canvas.line({x, axes.top}, {x, axes.bottom + 4}, {Ink::none, 1, Ink::line, 1, {}, "grid"});
    const PixelPoint baseline{x, axes.bottom + 18};
    const double room = text_width(known.label, font_size) + 8;
    const auto place =
        labels.place(room, font_size,
                     {{baseline, TextAnchor::middle}, {{axes.right, baseline.y}, TextAnchor::end}});
    if (!place || std::abs(place->baseline.x - x) > room) continue;
    canvas.text(place->baseline, known.label,
                {font_size, place->anchor, Ink::muted, false, false, {}});
  }
  canvas.text({axes.right, axes.bottom + 37},
              units == UnitSystem::us_customary ? "Sieve or size" : "Grain size, mm",
              {font_size, TextAnchor::end, Ink::muted, false, false, {}});
}

/// Parts are told apart by line and ground: soil ochre and broken, filter blue, rock grey.
struct PartStyle {
  Ink ink;
  double fill;
  double stroke;
  std::string_view dash;
};
PartStyle style_of(FilterPicture::Part part) {
  switch (part) {
    case FilterPicture::Part::soil:
      return {Ink::ochre, 0.14, 2.5, "8 4"};
    case FilterPicture::Part::filter:
      return {Ink::river, 0.16, 2, {}};
    case FilterPicture::Part::rock:
      return {Ink::stone_3, 0.3, 2.5, {}};
  }
  return {Ink::muted, 0.1, 1, {}};
}

/// Two filters on one picture: the second is drawn dotted.
PartStyle style_of_layer(const FilterPicture& picture, std::size_t index) {
  auto style = style_of(picture.layers[index].part);
  const bool again = index > 0 && picture.layers[index].part == FilterPicture::Part::filter &&
                     picture.layers[index - 1].part == FilterPicture::Part::filter;
  if (again) style.dash = "2 3";
  return style;
}

void draw_layer(SvgCanvas& canvas, const FilterAxes& axes, const FilterPicture::Layer& layer,
                const PartStyle& style) {
  const auto coarse = line_of(layer.coarse, axes);
  auto fine = line_of(layer.fine, axes);
  const Paint line{Ink::none, 1, style.ink, style.stroke, style.dash, "layer"};
  canvas.polyline(coarse, line);
  if (fine.empty()) return;
  canvas.polyline(fine, line);
  auto area = coarse;
  area.insert(area.end(), fine.rbegin(), fine.rend());
  canvas.polygon(area, {style.ink, style.fill, Ink::none, 0, {}, "band"});
}

/// A bar at the control point with an arrow to the side where the filter must lie.
void draw_control_point(SvgCanvas& canvas, const FilterAxes& axes,
                        const FilterPicture::ControlPoint& point) {
  if (!can_be_drawn(point.size, point.percent)) return;
  const double x = axes.x(point.size.millimeters());
  const double y = axes.y(point.percent);
  const double side = point.is_largest ? -1 : 1;
  canvas.path(fmt::format("M{0} {1}V{2}M{0} {3}H{4}m{5} -4l{6} 4l{5} 4", svg_number(x),
                          svg_number(y - 7), svg_number(y + 7), svg_number(y),
                          svg_number(x + 14 * side), svg_number(-5 * side), svg_number(5 * side)),
              {Ink::none, 1, Ink::ink, 1.75, {}, "control-point"});
}

std::vector<LegendEntry> legend_of(const FilterPicture& picture) {
  std::vector<LegendEntry> legend;
  for (std::size_t i = 0; i < picture.layers.size(); ++i) {
    const auto style = style_of_layer(picture, i);
    const bool band = !picture.layers[i].fine.empty();
    legend.push_back({[style, band](SvgCanvas& to, PixelPoint centre) {
                        if (band) {
                          to.rectangle({centre.x - 14, centre.y - 7}, 28, 14,
                                       {style.ink, style.fill, Ink::none, 0, {}, "band"});
                        }
                        to.line({centre.x - 14, centre.y}, {centre.x + 14, centre.y},
                                {Ink::none, 1, style.ink, style.stroke, style.dash, "layer"});
                      },
                      picture.layers[i].name});
  }
  if (!picture.control_points.empty()) {
    legend.push_back({[](SvgCanvas& to, PixelPoint centre) {
                        to.path(fmt::format("M{0} {1}V{2}M{0} {3}h14m-5 -4l5 4l-5 4",
                                            svg_number(centre.x - 7), svg_number(centre.y - 7),
                                            svg_number(centre.y + 7), svg_number(centre.y)),
                                {Ink::none, 1, Ink::ink, 1.75, {}, "control-point"});
                      },
                      "Control points: a filter on the soil lies on the side of the arrow"});
  }
  if (picture.fabric_opening) {
    legend.push_back({[](SvgCanvas& to, PixelPoint centre) {
                        to.line({centre.x, centre.y - 8}, {centre.x, centre.y + 8},
                                {Ink::none, 1, Ink::river, 2, "6 3", "fabric"});
                      },
                      "Openings of the geotextile"});
  }
  return legend;
}

}  // namespace

std::string draw(const FilterPicture& picture, UnitSystem units, double width) {
  SvgCanvas canvas(fmt::format("{}-{}", picture.id, svg_number(width)), width);
  FilterAxes axes;
  axes.left = 40;
  axes.right = width - 12;
  axes.top = 34;
  axes.bottom = axes.top + std::clamp(width * 0.48, 250.0, 460.0);
  set_decades(axes, picture);
  draw_filter_axes(canvas, axes, units);
  for (std::size_t i = 0; i < picture.layers.size(); ++i) {
    draw_layer(canvas, axes, picture.layers[i], style_of_layer(picture, i));
  }
  if (picture.fabric_opening && can_be_drawn(*picture.fabric_opening, 0)) {
    const double x = axes.x(picture.fabric_opening->millimeters());
    canvas.line({x, axes.top}, {x, axes.bottom}, {Ink::none, 1, Ink::river, 2, "6 3", "fabric"});
  }
  for (const auto& point : picture.control_points) draw_control_point(canvas, axes, point);
  const double bottom = draw_legend(canvas, legend_of(picture), 4, width - 4, axes.bottom + 50);
  return canvas.finish(bottom + 4, "filter-picture", picture.title, picture.description);
}

}  // namespace proofstone
