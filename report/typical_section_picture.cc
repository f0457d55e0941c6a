#include "report/typical_section_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>
#include <utility>

#include "report/callouts.h"
#include "report/dimension_line.h"
#include "report/picture_style.h"
#include "report/section_view.h"
#include "report/text_width.h"
#include "report/typical_section_dimensions.h"
#include "report/typical_section_drawing.h"
#include "report/typical_section_paint.h"

namespace proofstone {

namespace {

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
  // A slope shows more of the water than of the land behind it.
  const double to_water = drawing.level ? 0.08 : 0.28;
  const double to_land = drawing.level ? 0.08 : 0.12;
  window.left -= (drawing.channel_on_right ? to_land : to_water) * across;
  window.right += (drawing.channel_on_right ? to_water : to_land) * across;
  const double highest = wide ? 460 : 300;
  const double scale =
      std::min(room / std::max(window.right - window.left, 0.02), (highest - 70) / up);
  // Air above and soil below for the slope, the dimensions and their numbers.
  window.top += (drawing.level ? 34 : 22) / scale;
  window.bottom -= 48 / scale;
  const double spare = room - (window.right - window.left) * scale;
  window.left -= spare / 2 / scale;
  window.right += spare / 2 / scale;
  const double left = wide && !drawing.channel_on_right ? layout.column_width + 22 : 4;
  layout.view = {window, {left, 8}, scale, scale};
  layout.column_left = drawing.channel_on_right ? left + room + 18 : 0;
  return layout;
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

/// The widest stretch of water at a level that is in view, in pixels from left to right.
std::optional<std::pair<double, double>> water_in_view(const DrawnSection& section, double z,
                                                       const SectionView& view) {
  const PixelBox box = view.box();
  std::optional<std::pair<double, double>> widest;
  for (const auto& [from, to] : wet_stretches(section.ground, z)) {
    const double left = std::max(view.at({from, z}).x, box.left);
    const double right = std::min(view.at({to, z}).x, box.right);
    const double before = widest ? widest->second - widest->first : 0;
    if (right - left > before) widest = {left, right};
  }
  return widest;
}

/// Keeps words off the ground and off the marks of water levels.
void take_ground_and_marks(const DrawnSection& section, const SectionView& view,
                           LabelPlacement& placement) {
  placement.take_line(view.line(section.ground), 3);
  for (const auto& level : section.levels) {
    const auto water = water_in_view(section, level.z, view);
    if (!water) continue;
    const double x = (water->first + water->second) / 2;
    const double y = view.at({view.window.left, level.z}).y;
    placement.take({x - 8, y - 12, x + 8, y});
  }
}

/// Names a water level on its line, from `edge` of the water on; nothing where there is no room.
bool name_level(SvgCanvas& canvas, const std::string& label, PixelPoint edge, bool on_right,
                LabelPlacement& placement) {
  const auto anchor = on_right ? TextAnchor::end : TextAnchor::start;
  const double x = edge.x + (on_right ? -6 : 6);
  const auto place = placement.place(text_width(label, font_size) * bold_width, font_size,
                                     {{{x, edge.y - 5}, anchor}, {{x, edge.y + 15}, anchor}});
  if (!place) return false;
  canvas.text(place->baseline, label, {font_size, anchor, Ink::river, false, true, "label"});
  return true;
}

/// The lowest and the highest place of all rock.
std::pair<double, double> rock_heights(const TypicalSectionDrawing& drawing) {
  double lowest = drawing.works.top;
  double highest = drawing.works.bottom;
  for (const auto& rock : drawing.rocks) {
    for (const auto& place : rock.outline) {
      lowest = std::min(lowest, place.z);
      highest = std::max(highest, place.z);
    }
  }
  return {lowest, highest};
}

/// What is named by numbers, from left to right, and the levels for which there was no room.
std::vector<Callout> callouts_of(SvgCanvas& canvas, const TypicalSectionDrawing& drawing,
                                 const std::vector<TypicalSectionPicture::WaterLevel>& levels,
                                 const DrawnSection& section, const SectionView& view,
                                 LabelPlacement& placement) {
  std::vector<Callout> callouts;
  const auto [lowest, highest] = rock_heights(drawing);
  for (const auto& note : drawing.notes) {
    Callout callout{view.at(note.at), note.text};
    // The number of a dimension stands on the far side of it from the rock.
    const bool apart = note.role == SectionRole::dimension || note.role == SectionRole::flow;
    if (apart && note.at.z > highest) callout.away = {0, -1};
    if (apart && note.at.z < lowest) callout.away = {0, 1};
    callouts.push_back(std::move(callout));
  }
  std::sort(callouts.begin(), callouts.end(), [](const Callout& a, const Callout& b) {
    return std::tie(a.at.x, a.at.y, a.text) < std::tie(b.at.x, b.at.y, b.text);
  });
  const bool on_right = drawing.channel_on_right;
  for (const auto& level : levels) {
    const double z = level.level.meters();
    if (!std::isfinite(z)) continue;
    const auto water =
        water_in_view(section, z, view).value_or(std::pair(view.box().left, view.box().right));
    const PixelPoint edge{on_right ? water.second : water.first, view.at({view.window.left, z}).y};
    if (name_level(canvas, level.label, edge, on_right, placement)) continue;
    const double inside = std::min(14.0, (water.second - water.first) / 2);
    callouts.push_back({{edge.x + (on_right ? -inside : inside), edge.y}, level.label});
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
  if (!drawing || (!drawing->in_plan && section.ground.size() < 2)) {
    canvas.text({4, 18}, "There is nothing to show.", quiet_text);
    return canvas.finish(28, "typical-section-picture", picture.title, picture.description);
  }
  const auto layout = layout_of(*drawing, width);
  const auto& view = layout.view;
  if (!drawing->in_plan) {
    draw_view(canvas, section, view, SectionWords::dimensions, picture.id);
  }
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
  if (!drawing->in_plan) draw_thickness(canvas, *drawing, view, placement);
  for (const auto& shape : drawing->shapes) {
    if (shape.role != SectionRole::dimension) continue;
    draw_dimension(canvas, view.at(shape.points[0]), view.at(shape.points[1]));
  }
  canvas.end_group();

  double end = draw_scale_bar(canvas, view, units, view.box().bottom + 12);
  take_works(*drawing, view, placement);
  take_ground_and_marks(section, view, placement);
  const auto callouts =
      callouts_of(canvas, *drawing, picture.water_levels, section, view, placement);
  const bool beside = layout.column_width > 0;
  const CalloutList list{beside ? layout.column_left : 0, beside ? layout.column_width : width,
                         beside ? 8 : end + 8};
  end = std::max(end, draw_callouts(canvas, callouts, placement, list));
  return canvas.finish(end, "typical-section-picture", picture.title, picture.description);
}

}  // namespace proofstone
