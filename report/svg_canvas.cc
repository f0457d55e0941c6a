#include "report/svg_canvas.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "report/markup.h"

namespace proofstone {

namespace {

constexpr double farthest_pixel = 1e6;

std::string class_attribute(std::string_view css_class) {
  return css_class.empty() ? "" : fmt::format(" class=\"{}\"", escaped(css_class));
}

std::string paint_attributes(const Paint& paint) {
  std::string text = class_attribute(paint.css_class);
  text += fmt::format(" fill=\"{}\"", ink_value(paint.fill));
  if (paint.fill != Ink::none && paint.fill_opacity < 1) {
    text += fmt::format(" fill-opacity=\"{}\"", svg_number(paint.fill_opacity));
  }
  if (paint.stroke != Ink::none) {
    text += fmt::format(" stroke=\"{}\" stroke-width=\"{}\" stroke-linejoin=\"round\"",
                        ink_value(paint.stroke), svg_number(paint.stroke_width));
    if (!paint.dash.empty()) text += fmt::format(" stroke-dasharray=\"{}\"", escaped(paint.dash));
  }
  return text;
}

std::string_view anchor_name(TextAnchor anchor) {
  switch (anchor) {
    case TextAnchor::start:
      return "start";
    case TextAnchor::middle:
      return "middle";
    case TextAnchor::end:
      return "end";
  }
  return "start";
}

}  // namespace

std::string svg_number(double value) {
  if (!std::isfinite(value)) return "0";
  const double clamped = std::clamp(value, -farthest_pixel, farthest_pixel);
  const long long hundredths = std::llround(clamped * 100);
  const long long size = std::llabs(hundredths);
  std::string text = fmt::format("{}{}", hundredths < 0 ? "-" : "", size / 100);
  const long long rest = size % 100;
  if (rest == 0) return text;
  text += fmt::format(".{:02}", rest);
  if (text.back() == '0') text.pop_back();
  return text;
}

std::string path_through(const std::vector<PixelPoint>& points, bool closed) {
  std::string data;
  for (const auto& point : points) {
    data += data.empty() ? 'M' : 'L';
    data += svg_number(point.x);
    data += ' ';
    data += svg_number(point.y);
  }
  if (closed && !data.empty()) data += 'Z';
  return data;
}

SvgCanvas::SvgCanvas(const std::string& id, double width) : id_(id_from(id)), width_(width) {}

void SvgCanvas::line(PixelPoint from, PixelPoint to, const Paint& paint) {
  body_ +=
      fmt::format("<line x1=\"{}\" y1=\"{}\" x2=\"{}\" y2=\"{}\"{}/>\n", svg_number(from.x),
                  svg_number(from.y), svg_number(to.x), svg_number(to.y), paint_attributes(paint));
}

void SvgCanvas::path(const std::string& data, const Paint& paint) {
  if (data.empty()) return;
  body_ += fmt::format("<path d=\"{}\"{}/>\n", data, paint_attributes(paint));
}

void SvgCanvas::polyline(const std::vector<PixelPoint>& points, const Paint& paint) {
  path(path_through(points, false), paint);
}

void SvgCanvas::polygon(const std::vector<PixelPoint>& points, const Paint& paint) {
  path(path_through(points, true), paint);
}

void SvgCanvas::rectangle(PixelPoint corner, double width, double height, const Paint& paint) {
  body_ += fmt::format("<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\"{}/>\n",
                       svg_number(corner.x), svg_number(corner.y), svg_number(width),
                       svg_number(height), paint_attributes(paint));
}

void SvgCanvas::circle(PixelPoint centre, double radius, const Paint& paint) {
  body_ += fmt::format("<circle cx=\"{}\" cy=\"{}\" r=\"{}\"{}/>\n", svg_number(centre.x),
                       svg_number(centre.y), svg_number(radius), paint_attributes(paint));
}

void SvgCanvas::text(PixelPoint baseline, std::string_view text, const TextStyle& style) {
  std::string attributes = class_attribute(style.css_class);
  attributes +=
      fmt::format(" font-size=\"{}\" fill=\"{}\"", svg_number(style.size), ink_value(style.ink));
  if (style.anchor != TextAnchor::start) {
    attributes += fmt::format(" text-anchor=\"{}\"", anchor_name(style.anchor));
  }
  if (style.bold) attributes += " font-weight=\"600\"";
  if (style.halo) {
    attributes += fmt::format(
        " stroke=\"{}\" stroke-width=\"3\" stroke-linejoin=\"round\" paint-order=\"stroke\"",
        ink_value(Ink::paper));
  }
  body_ += fmt::format("<text x=\"{}\" y=\"{}\"{}>{}</text>\n", svg_number(baseline.x),
                       svg_number(baseline.y), attributes, escaped(text));
}

void SvgCanvas::begin_group(std::string_view css_class) {
  body_ += fmt::format("<g{}>\n", class_attribute(css_class));
}

void SvgCanvas::begin_clipped_group(std::string_view css_class,
                                    const std::vector<PixelPoint>& area) {
  const std::string clip = fmt::format("{}-clip-{}", id_, ++clips_);
  definitions_ += fmt::format("<clipPath id=\"{}\"><path d=\"{}\"/></clipPath>\n", clip,
                              path_through(area, true));
  body_ += fmt::format("<g{} clip-path=\"url(#{})\">\n", class_attribute(css_class), clip);
}

void SvgCanvas::begin_placed_group(std::string_view css_class, PixelPoint origin, double scale) {
  body_ +=
      fmt::format("<g{} transform=\"translate({} {}) scale({})\">\n", class_attribute(css_class),
                  svg_number(origin.x), svg_number(origin.y), svg_number(scale));
}

void SvgCanvas::end_group() { body_ += "</g>\n"; }

std::string SvgCanvas::finish(double height, std::string_view css_class, std::string_view title,
                              std::string_view description) const {
  const std::string w = svg_number(width_);
  const std::string h = svg_number(height);
  std::string svg = fmt::format(
      "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"picture {}\" viewBox=\"0 0 {} {}\" "
      "width=\"{}\" height=\"{}\" role=\"img\" aria-labelledby=\"{}-title {}-desc\" "
      "font-family=\"system-ui, 'Segoe UI', Roboto, 'DejaVu Sans', sans-serif\">\n",
      escaped(css_class), w, h, w, h, id_, id_);
  svg += fmt::format("<title id=\"{}-title\">{}</title>\n", id_, escaped(title));
  svg += fmt::format("<desc id=\"{}-desc\">{}</desc>\n", id_, escaped(description));
  if (!definitions_.empty()) svg += "<defs>\n" + definitions_ + "</defs>\n";
  return svg + body_ + "</svg>\n";
}

}  // namespace proofstone
