#include "report/typical_section_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>

#include "report/axis_ticks.h"
#include "report/callouts.h"
#include "report/dimension_line.h"
#include "report/section_view.h"
#include "report/text_width.h"
#include "report/typical_section_drawing.h"
#include "report/typical_section_paint.h"

namespace proofstone {

namespace {

constexpr double font_size = 13;
constexpr double phone = 560;
const TextStyle quiet_text{font_size, TextAnchor::start, Ink::muted, false, false, {}};
const TextStyle halo_text{font_size, TextAnchor::middle, Ink::ink, true, true, "label"};

/// Where the drawing and the list of what it shows stand.
struct Layout {
  SectionView view;
  double column_left = 0;
  double column_width = 0;  ///< 0: the list stands below
};

Layout layout_of(const TypicalSectionDrawing& drawing, double width) {
  Layout layout;
  const bool wide = width >= phone;
  if (wide) layout.column_width = std::min(270.0, 0.36 * width);
  const double room = width - layout.column_width - (wide ? 26 : 8);
  SectionWindow window = drawing.works;
  const double across = window.right - window.left;
  const double up = std::max(window.top - window.bottom, 0.02);
  (drawing.channel_on_right ? window.right : window.left) +=
      (drawing.channel_on_right ? 1 : -1) * 0.28 * across;
  (drawing.channel_on_right ? window.left : window.right) -=
      (drawing.channel_on_right ? 1 : -1) * 0.12 * across;
  const double highest = wide ? 460 : 300;
  const double scale =
      std::min(room / std::max(window.right - window.left, 0.02), (highest - 70) / up);
  // Air above and soil below for the slope and the dimension.
  window.top += 22 / scale;
  window.bottom -= 48 / scale;
  const double spare = room - (window.right - window.left) * scale;
  window.left -= spare / 2 / scale;
  window.right += spare / 2 / scale;
  const double left = wide && !drawing.channel_on_right ? layout.column_width + 22 : 4;
  layout.view = {window, {left, 8}, scale, scale};
  layout.column_left = drawing.channel_on_right ? left + room + 18 : 0;
  return layout;
}

std::vector<PixelPoint> corners_of(const PixelBox& box) {
  return {
      {box.left, box.top}, {box.right, box.top}, {box.right, box.bottom}, {box.left, box.bottom}};
}

/// The thickness, with its words in the soil below.
void draw_thickness(SvgCanvas& canvas, const TypicalSectionDrawing& drawing,
                    const SectionView& view, LabelPlacement& placement) {
  const PixelPoint from = view.at(drawing.thickness_from);
  const PixelPoint to = view.at(drawing.thickness_to);
  draw_dimension(canvas, from, to);
  placement.take_line({from, to}, 10);
  const double length = std::max(1e-6, std::hypot(to.x - from.x, to.y - from.y));
  const PixelPoint words{to.x + 30 * (to.x - from.x) / length,
                         to.y + 30 * (to.y - from.y) / length};
  const double width = text_width(drawing.thickness_text, font_size) * bold_width;
  const auto place = placement.place(width, font_size,
                                     {{{words.x, words.y + 5}, TextAnchor::middle},
                                      {{words.x, words.y + 16}, TextAnchor::middle},
                                      {{words.x, words.y + 5}, TextAnchor::end},
                                      {{words.x, words.y + 5}, TextAnchor::start}});
  if (!place) return;
  TextStyle style = halo_text;
  style.anchor = place->anchor;
  canvas.text(place->baseline, drawing.thickness_text, style);
}

/// The triangle that tells the slope, in the soil below the layer.
void draw_slope(SvgCanvas& canvas, const TypicalSectionDrawing& drawing, const SectionView& view,
                LabelPlacement& placement) {
  const double rise = std::clamp(60 * drawing.rise_per_run, 8.0, 30.0);
  const double run = rise / std::max(drawing.rise_per_run, 1e-3);
  if (!(run < view.width() / 2)) return;
  const double toward = drawing.channel_on_right ? 1 : -1;
  const PixelPoint middle = view.at(drawing.slope_middle);
  const PixelPoint high{middle.x - toward * (run / 2 + 34), middle.y + 20};
  const PixelPoint corner{high.x, high.y + rise};
  const PixelPoint low{high.x + toward * run, corner.y};
  canvas.polygon({high, corner, low}, {Ink::paper, 1, Ink::ink, 1.25, {}, "slope-triangle"});
  placement.take(
      {std::min(high.x, low.x) - 14, high.y - 2, std::max(high.x, low.x) + 4, corner.y + 18});
  canvas.text({high.x - toward * 8, high.y + rise / 2 + 5}, "1", halo_text);
  canvas.text({(corner.x + low.x) / 2, corner.y + 15}, drawing.slope_text, halo_text);
}

double draw_scale_bar(SvgCanvas& canvas, const SectionView& view, UnitSystem units, double top) {
  const Unit& unit = ground_unit(units);
  const auto ticks = even_ticks(0, 0.35 * view.width() / view.pixels_across / unit.si_factor, 2);
  double x = 4;
  if (ticks.size() > 1) {
    const double length = ticks.back().value * unit.si_factor * view.pixels_across;
    canvas.rectangle({4.5, top}, length / 2, 6, {Ink::ink, 1, Ink::ink, 1, {}, "scale-bar"});
    canvas.rectangle({4.5 + length / 2, top}, length / 2, 6,
                     {Ink::paper, 1, Ink::ink, 1, {}, "scale-bar"});
    const auto text = fmt::format("{} {}", ticks.back().label, unit.symbol);
    canvas.text({length + 12, top + 7.5}, text, quiet_text);
    x = length + 12 + text_width(text, font_size) + 18;
  }
  canvas.text({x, top + 7.5}, "true scale", quiet_text);
  return top + 16;
}

/// Ground and water as every section is drawn.
DrawnSection ground_and_water(const TypicalSectionPicture& picture, UnitSystem units) {
  SectionPicture section;
  section.ground = picture.ground;
  std::optional<Length> highest;
  for (const auto& level : picture.water_levels) {
    if (!highest || level.level > *highest) highest = level.level;
  }
  for (const auto& level : picture.water_levels) {
    section.water_levels.push_back({level.label, level.level, level.level >= *highest});
  }
  return drawn_section(section, units);
}

/// Keeps words off the ground and off the marks of water levels.
void take_ground_and_marks(const DrawnSection& section, const SectionView& view,
                           LabelPlacement& placement) {
  placement.take_line(view.line(section.ground), 3);
  const PixelBox box = view.box();
  for (const auto& level : section.levels) {
    double widest = 0;
    PixelPoint mark;
    for (const auto& [from, to] : wet_stretches(section.ground, level.z)) {
      const double left = std::max(view.at({from, level.z}).x, box.left);
      const double right = std::min(view.at({to, level.z}).x, box.right);
      if (right - left <= widest) continue;
      widest = right - left;
      mark = {(left + right) / 2, view.at({from, level.z}).y};
    }
    if (widest > 0) placement.take({mark.x - 8, mark.y - 12, mark.x + 8, mark.y});
  }
}

/// Names a water level on its line; nothing where there is no room.
bool name_level(SvgCanvas& canvas, const TypicalSectionPicture::WaterLevel& level, bool on_right,
                const SectionView& view, LabelPlacement& placement) {
  const PixelBox box = view.box();
  const double y = view.at({view.window.left, level.level.meters()}).y;
  const double x = on_right ? box.right - 6 : box.left + 6;
  const auto anchor = on_right ? TextAnchor::end : TextAnchor::start;
  const auto place = placement.place(text_width(level.label, font_size) * bold_width, font_size,
                                     {{{x, y - 5}, anchor}, {{x, y + 15}, anchor}});
  if (!place) return false;
  canvas.text(place->baseline, level.label, {font_size, anchor, Ink::river, false, true, "label"});
  return true;
}

/// What is named by numbers, from left to right, and the levels for which there was no room.
std::vector<Callout> callouts_of(SvgCanvas& canvas, const TypicalSectionDrawing& drawing,
                                 const TypicalSectionPicture& picture, const SectionView& view,
                                 LabelPlacement& placement) {
  std::vector<Callout> callouts;
  for (const auto& note : drawing.notes) callouts.push_back({view.at(note.at), note.text});
  std::sort(callouts.begin(), callouts.end(), [](const Callout& a, const Callout& b) {
    return std::tie(a.at.x, a.at.y, a.text) < std::tie(b.at.x, b.at.y, b.text);
  });
  for (const auto& level : picture.water_levels) {
    if (!std::isfinite(level.level.si())) continue;
    const PixelPoint at{drawing.channel_on_right ? view.box().right - 14 : view.box().left + 14,
                        view.at({view.window.left, level.level.meters()}).y};
    if (!name_level(canvas, level, drawing.channel_on_right, view, placement)) {
      callouts.push_back({at, level.label});
    }
  }
  return callouts;
}

/// Keeps numbers off the rock and what lies on it.
void take_works(const TypicalSectionDrawing& drawing, const SectionView& view,
                LabelPlacement& placement) {
  for (const auto& shape : drawing.shapes) {
    if (shape.role == SectionRole::ground || shape.role == SectionRole::water) continue;
    auto points = view.line(shape.points);
    if (shape.closed && !points.empty()) points.push_back(points.front());
    placement.take_line(points, 2);
  }
}

}  // namespace

std::string draw(const TypicalSectionPicture& picture, UnitSystem units, double width) {
  SvgCanvas canvas(fmt::format("{}-{}", picture.id, svg_number(width)), width);
  const auto drawing = typical_section_drawing(picture);
  const auto section = ground_and_water(picture, units);
  if (!drawing || section.ground.size() < 2) {
    canvas.text({4, 18}, "No slope to show.", quiet_text);
    return canvas.finish(28, "typical-section-picture", picture.title, picture.description);
  }
  const auto layout = layout_of(*drawing, width);
  const auto& view = layout.view;
  draw_view(canvas, section, view, SectionWords::dimensions, picture.id);
  canvas.begin_clipped_group("works", corners_of(view.box()));
  const double median = std::max(0.0, picture.median_stone.meters());
  for (std::size_t i = 0; i < drawing->rocks.size(); ++i) {
    draw_rock(canvas, drawing->rocks[i], view, median, picture.angularity,
              fmt::format("{}/{}", picture.id, i));
  }
  const bool seeded = picture.cover && picture.cover->seeded;
  for (const auto& shape : drawing->shapes) draw_shape(canvas, shape, view, seeded);
  LabelPlacement placement(view.box());
  draw_slope(canvas, *drawing, view, placement);
  draw_thickness(canvas, *drawing, view, placement);
  for (const auto& shape : drawing->shapes) {
    if (shape.role != SectionRole::dimension) continue;
    draw_dimension(canvas, view.at(shape.points[0]), view.at(shape.points[1]));
  }
  canvas.end_group();

  double end = draw_scale_bar(canvas, view, units, view.box().bottom + 12);
  take_works(*drawing, view, placement);
  take_ground_and_marks(section, view, placement);
  const auto callouts = callouts_of(canvas, *drawing, picture, view, placement);
  const bool beside = layout.column_width > 0;
  const CalloutList list{beside ? layout.column_left : 0, beside ? layout.column_width : width,
                         beside ? 8 : end + 8};
  end = std::max(end, draw_callouts(canvas, callouts, placement, list));
  return canvas.finish(end, "typical-section-picture", picture.title, picture.description);
}

}  // namespace proofstone
