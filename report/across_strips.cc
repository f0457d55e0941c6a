#include "report/across_strips.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/axis_ticks.h"
#include "report/picture_style.h"
#include "report/text_width.h"

namespace proofstone {

namespace {

constexpr double strip_height = 64;

/// One strip: what it shows, in the unit it is read in.
struct Strip {
  std::string heading;
  struct Value {
    double left = 0;   ///< station, m
    double right = 0;  ///< station, m
    double value = 0;
  };
  std::vector<Value> values;
  std::string css_class;
};

bool usable(double left, double right, double value) {
  return std::isfinite(left) && std::isfinite(right) && std::isfinite(value) && right > left &&
         value >= 0;
}

template <class Q>
Strip strip_of(const SectionPicture& picture, Q SectionPicture::AcrossValue::* member,
               const Unit& unit, const std::string& name, const std::string& css_class) {
  Strip strip{fmt::format("{}, {}: {}", name, unit.symbol, picture.across_of), {}, css_class};
  for (const auto& slice : picture.across) {
    const double left = slice.left.meters();
    const double right = slice.right.meters();
    const double value = (slice.*member).in(unit);
    if (usable(left, right, value)) strip.values.push_back({left, right, value});
  }
  return strip;
}

/// The values as steps, each run of neighbouring slices a shape of its own.
std::vector<std::vector<PixelPoint>> shapes_of(const Strip& strip, const SectionView& view,
                                               double base, double pixels) {
  std::vector<std::vector<PixelPoint>> shapes;
  double end = -1e300;
  for (const auto& value : strip.values) {
    const double left = std::max(view.at({value.left, 0}).x, view.box().left);
    const double right = std::min(view.at({value.right, 0}).x, view.box().right);
    if (!(right > left)) continue;
    const double y = base - value.value * pixels;
    if (shapes.empty() || value.left - end > 1e-6) {
      if (!shapes.empty()) shapes.back().push_back({shapes.back().back().x, base});
      shapes.push_back({{left, base}});
    }
    shapes.back().push_back({left, y});
    shapes.back().push_back({right, y});
    end = value.right;
  }
  if (!shapes.empty()) shapes.back().push_back({shapes.back().back().x, base});
  return shapes;
}

double draw_strip(SvgCanvas& canvas, const Strip& strip, const SectionView& view, double top) {
  double largest = 0;
  for (const auto& value : strip.values) largest = std::max(largest, value.value);
  if (!(largest > 0)) return top;
  double y = top;
  for (const auto& line : wrapped(strip.heading, canvas.width() - 4, font_size)) {
    canvas.text({0, y + 13}, line, {font_size, TextAnchor::start, Ink::muted, false, false, {}});
    y += 17;
  }
  const auto ticks = even_ticks(0, largest * 1.1, 3);
  const double above = ticks.empty() ? largest : std::max(largest, ticks.back().value);
  const double base = y + 6 + strip_height;
  const double pixels = strip_height / above;
  const PixelBox box = view.box();
  const Paint mark{Ink::none, 1, Ink::line, 1, {}, "axis"};
  for (const auto& tick : ticks) {
    const double at = base - tick.value * pixels;
    canvas.line({box.left, at}, {box.right, at}, mark);
    canvas.text({box.left - 7, at + 4.5}, tick.label,
                {font_size, TextAnchor::end, Ink::muted, false, false, {}});
  }
  for (const auto& shape : shapes_of(strip, view, base, pixels)) {
    canvas.polygon(shape, {Ink::river, 0.18, Ink::none, 0, {}, strip.css_class});
    canvas.polyline(shape, {Ink::none, 1, Ink::river, 1.5, {}, strip.css_class});
  }
  canvas.line({box.left, base}, {box.right, base}, {Ink::none, 1, Ink::muted, 1, {}, "axis"});
  return base + 12;
}

}  // namespace

double draw_across_strips(SvgCanvas& canvas, const SectionPicture& picture, const SectionView& view,
                          UnitSystem units, double top) {
  const bool si = units == UnitSystem::si;
  top = draw_strip(canvas,
                   strip_of(picture, &SectionPicture::AcrossValue::velocity,
                            si ? unit::meter_per_second : unit::foot_per_second,
                            "Velocity across a straight reach", "velocity-strip"),
                   view, top);
  return draw_strip(canvas,
                    strip_of(picture, &SectionPicture::AcrossValue::shear,
                             si ? unit::pascal : unit::pound_per_square_foot, "Shear on the ground",
                             "shear-strip"),
                    view, top);
}

}  // namespace proofstone
