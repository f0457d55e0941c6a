#include "report/section_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/across_strips.h"
#include "report/axis_ticks.h"
#include "report/ground_axes.h"
#include "report/picture_style.h"
#include "report/section_view.h"
#include "report/text_width.h"

namespace proofstone {

namespace {

SectionWindow window_of(const DrawnSection& section) {
  SectionWindow window{section.ground.front().x, section.ground.back().x, section.ground.front().z,
                       section.ground.front().z};
  const auto reach = [&](double z) {
    window.bottom = std::min(window.bottom, z);
    window.top = std::max(window.top, z);
  };
  for (const auto& place : section.ground) {
    reach(place.z);
    window.left = std::min(window.left, place.x);
    window.right = std::max(window.right, place.x);
  }
  for (const auto& level : section.levels) reach(level.z);
  for (const auto& layer : section.layers) {
    for (const auto& place : layer.strip.outline()) {
      reach(place.z);
      window.left = std::min(window.left, place.x);
      window.right = std::max(window.right, place.x);
    }
  }
  const double least =
      std::max({window.right - window.left, window.top - window.bottom, 0.01}) / 500;
  window.right = std::max(window.right, window.left + least);
  window.top = std::max(window.top, window.bottom + least);
  return window;
}

/// The whole section in the width there is: to true scale, or with its heights stretched.
struct WholeView {
  SectionView view;
  int stretch = 1;  ///< heights over lengths
};

WholeView whole_view(const DrawnSection& section, double width) {
  WholeView whole;
  whole.view.window = window_of(section);
  auto& window = whole.view.window;
  const double room = width - axis_room - 10;
  const double lowest = width < phone ? 100 : 150;
  const double highest = width < phone ? 300 : 420;
  const double across = window.right - window.left;
  double scale = std::min(room / across, highest / (window.top - window.bottom));
  for (const int stretch : {1, 2, 3, 4, 5, 10, 20, 50, 100}) {
    whole.stretch = stretch;
    if ((window.top - window.bottom) * scale * stretch >= lowest) break;
  }
  whole.view.pixels_across = scale;
  whole.view.pixels_up = scale * whole.stretch;
  // Soil below the lowest point for the names of layers, and air above the highest level.
  window.bottom -= 44 / whole.view.pixels_up;
  window.top += 24 / whole.view.pixels_up;
  whole.view.corner = {axis_room + (room - across * scale) / 2, 28};
  return whole;
}

/// A bar of a round length from `left`, and how the heights are drawn. Returns where it ends below.
double draw_scale_bar(SvgCanvas& canvas, const SectionView& view, UnitSystem units, PixelPoint left,
                      const std::string& said) {
  const Unit& unit = ground_unit(units);
  const double room = 0.3 * view.width();
  const auto ticks = even_ticks(0, room / view.pixels_across / unit.si_factor, 2);
  double x = left.x;
  if (ticks.size() > 1) {
    const auto& last = ticks.back();
    const double length = last.value * unit.si_factor * view.pixels_across;
    const Paint dark{Ink::ink, 1, Ink::ink, 1, {}, "scale-bar"};
    const Paint light{Ink::paper, 1, Ink::ink, 1, {}, "scale-bar"};
    canvas.rectangle({x + 0.5, left.y - 6}, length / 2, 6, dark);
    canvas.rectangle({x + 0.5 + length / 2, left.y - 6}, length / 2, 6, light);
    const std::string text = fmt::format("{} {}", last.label, unit.symbol);
    canvas.text({x + length + 8, left.y + 1.5}, text, quiet_text);
    x += length + 8 + text_width(text, font_size) + 18;
  }
  double y = left.y + 1.5;
  for (const auto& line : wrapped(said, std::max(80.0, canvas.width() - x - 4), font_size)) {
    canvas.text({x, y}, line, quiet_text);
    y += 17;
  }
  return y - 17 + 7.5;
}

/// The layer at a scale at which its stones can be seen: the whole of it, or its middle.
SectionView enlarged_view(const DrawnSection::Layer& layer, double width, double top) {
  const auto outline = layer.strip.outline();
  SectionWindow box{outline[0].x, outline[0].x, outline[0].z, outline[0].z};
  for (const auto& place : outline) {
    box.left = std::min(box.left, place.x);
    box.right = std::max(box.right, place.x);
    box.bottom = std::min(box.bottom, place.z);
    box.top = std::max(box.top, place.z);
  }
  const double highest = width < phone ? 280 : 400;
  const double words = 46;  // pixels for the dimension below and air above
  double scale = std::min((width - 20) / (box.right - box.left + 1e-6),
                          (highest - 2 * words) / (box.top - box.bottom + 1e-6));
  constexpr double smallest_stone = 9;
  constexpr double largest_stone = 70;
  if (layer.median > 0) {
    scale = std::clamp(scale, smallest_stone / layer.median, largest_stone / layer.median);
  }
  SectionView view;
  for (int i = 0; i < 30; ++i) {
    const double across = width / scale;
    const double up = std::min(highest / scale, box.top - box.bottom + 2 * words / scale);
    const SectionPlace middle =
        layer.strip.at(layer.strip.length() / 2, layer.strip.thickness() / 2);
    const bool whole = (box.right - box.left) * scale <= width;
    const bool whole_height = box.top - box.bottom + 2 * words / scale <= highest / scale + 1e-9;
    const double x = whole ? (box.left + box.right) / 2 : middle.x;
    const double z = whole_height ? (box.bottom + box.top) / 2 : middle.z;
    view = {{x - across / 2, x + across / 2, z - up / 2, z + up / 2}, {0, top}, scale, scale};
    if (!(layer.median > 0) || stones_can_be_seen(layer, view) ||
        scale * layer.median > largest_stone) {
      break;
    }
    scale *= 1.12;
  }
  return view;
}

/// Marks in the whole view what an enlarged view shows.
void mark_window(SvgCanvas& canvas, const SectionView& whole, const SectionWindow& window) {
  const PixelBox box = whole.box();
  const PixelPoint a = whole.at({window.left, window.top});
  const PixelPoint b = whole.at({window.right, window.bottom});
  const double left = std::max(a.x, box.left);
  const double top = std::max(a.y, box.top);
  canvas.rectangle({left, top}, std::min(b.x, box.right) - left, std::min(b.y, box.bottom) - top,
                   {Ink::none, 1, Ink::muted, 1, "2 3", "enlarged-part"});
}

/// Draws the enlarged view of a layer from `top` down and returns where it ends.
double draw_enlarged(SvgCanvas& canvas, const DrawnSection& section, std::size_t index,
                     UnitSystem units, const SectionView& view, const std::string& seed) {
  const auto& layer = section.layers[index];
  const bool stones = stones_can_be_seen(layer, view);
  const std::string heading = stones ? fmt::format("{}, enlarged: stones at size, median {}",
                                                   layer.label, layer.median_text)
                                     : fmt::format("{}, enlarged", layer.label);
  double y = view.corner.y;
  SectionView placed = view;
  for (const auto& line : wrapped(heading, canvas.width() / bold_width, font_size)) {
    canvas.text({0, y + 13}, line, {font_size, TextAnchor::start, Ink::ink, true, false, {}});
    y += 18;
  }
  placed.corner.y = y + 4;
  draw_view(canvas, section, placed, SectionWords::dimensions, seed);
  const PixelBox box = placed.box();
  canvas.rectangle({box.left + 0.5, box.top}, placed.width() - 1, placed.height(),
                   {Ink::none, 1, Ink::muted, 1, "2 3", "enlarged-part"});
  draw_scale_bar(canvas, placed, units, {0, box.bottom + 20}, "true scale");
  return box.bottom + 30;
}

}  // namespace

std::string draw(const SectionPicture& picture, UnitSystem units, double width) {
  SvgCanvas canvas(fmt::format("{}-{}", picture.id, svg_number(width)), width);
  const auto section = drawn_section(picture, units);
  if (section.ground.size() < 2) {
    canvas.text({4, 18}, "No surveyed section to show.", quiet_text);
    return canvas.finish(28, "section-picture", picture.title, picture.description);
  }
  const auto whole = whole_view(section, width);
  const auto legend =
      draw_view(canvas, section, whole.view, SectionWords::levels_and_layers, picture.id);
  draw_ground_axes(canvas, whole.view, units, "Station");
  const double below = whole.view.box().bottom;
  const double bar_end = draw_scale_bar(
      canvas, whole.view, units, {axis_room, below + 60},
      whole.stretch == 1
          ? "true scale"
          : fmt::format("heights drawn {} times as large as lengths", whole.stretch));
  double end = std::max(below + 70, bar_end);
  if (!legend.empty()) end = draw_legend(canvas, legend, 0, width - 4, end + 4);
  end = draw_across_strips(canvas, picture, whole.view, units, end + 4);

  constexpr std::size_t most_enlarged = 3;
  std::size_t enlarged = 0;
  for (std::size_t i = 0; i < section.layers.size() && enlarged < most_enlarged; ++i) {
    if (whole.stretch == 1 && stones_can_be_seen(section.layers[i], whole.view)) continue;
    const auto view = enlarged_view(section.layers[i], width, end + 8);
    mark_window(canvas, whole.view, view.window);
    end = draw_enlarged(canvas, section, i, units, view, picture.id);
    ++enlarged;
  }
  return canvas.finish(end, "section-picture", picture.title, picture.description);
}

}  // namespace proofstone
