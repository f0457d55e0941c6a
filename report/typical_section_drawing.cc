#include "report/typical_section_drawing.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "report/built_slope.h"
#include "report/section_view.h"
#include "report/typical_section_cover.h"

namespace proofstone {

namespace {

using Drawing = TypicalSectionDrawing;

SectionRole role_of(RockKind kind) {
  switch (kind) {
    case RockKind::bare:
      return SectionRole::bare_rock;
    case RockKind::soil_filled:
      return SectionRole::soil_filled_rock;
    case RockKind::void_filled:
      return SectionRole::void_filled_rock;
    case RockKind::grouted:
      break;
  }
  return SectionRole::grouted_rock;
}

bool finite(SectionPlace place) { return std::isfinite(place.x) && std::isfinite(place.z); }

SectionPlace place_of(const GroundPoint& point) {
  return {point.station.meters(), point.elevation.meters()};
}

/// The middle of an outline's corners.
SectionPlace middle_of(const std::vector<SectionPlace>& outline) {
  SectionPlace middle;
  for (const auto& place : outline) {
    middle.x += place.x / static_cast<double>(outline.size());
    middle.z += place.z / static_cast<double>(outline.size());
  }
  return middle;
}

void add_parts(const TypicalSectionPicture& picture, const BuiltSlope& slope, Drawing& drawing) {
  const double thickness = picture.thickness.meters();
  for (const auto& part : picture.parts) {
    const double low = picture.level ? 0 : slope.from_foot(part.bottom.meters());
    const double high = picture.level ? slope.length() : slope.from_foot(part.top.meters());
    if (!(high > low)) continue;
    const auto role = role_of(part.kind);
    auto outline = slope.area(low, high, 0, thickness);
    // Clear of what stands in its middle.
    const double at = picture.structures.empty() ? 0.5 : 0.15;
    drawing.notes.push_back({role, slope.at(low + at * (high - low), thickness / 2), part.label});
    const double a = slope.along(low);
    const double b = slope.along(high);
    drawing.rocks.push_back({role, slope.strip(), std::min(a, b), std::max(a, b), outline});
    drawing.shapes.push_back({role, true, std::move(outline)});
  }
}

/// Stretches of level rock, from its foot, below which no key is dug: there alone bedding lies.
std::vector<std::pair<double, double>> beside_keys(const TypicalSectionPicture& picture,
                                                   double from, double to) {
  std::vector<std::pair<double, double>> stretches{{from, to}};
  if (!picture.level) return stretches;
  const double foot = picture.surface.front().station.meters();
  for (const auto& block : picture.blocks) {
    if (!block.is_key || block.outline.empty()) continue;
    double low = std::numeric_limits<double>::infinity();
    double high = 0;
    for (const auto& point : block.outline) {
      const double along = std::abs(foot - point.station.meters());
      low = std::min(low, along);
      high = std::max(high, along);
    }
    const auto last = stretches.back();
    stretches.back().second = std::min(last.second, low);
    stretches.emplace_back(std::max(last.first, high), last.second);
  }
  std::erase_if(stretches, [](const auto& one) { return !(one.second - one.first > 1e-6); });
  return stretches;
}

void add_under(const TypicalSectionPicture& picture, const BuiltSlope& slope, Drawing& drawing) {
  double down = picture.thickness.meters();
  double share = 0.12;
  for (const auto& under : picture.under) {
    const double thickness = under.thickness.meters();
    const double short_of_ends = under.short_of_ends.meters();
    const double from =
        std::isfinite(short_of_ends) ? std::clamp(short_of_ends, 0.0, 0.45 * slope.length()) : 0;
    const double to = slope.length() - from;
    for (const auto& [low, high] : beside_keys(picture, from, to)) {
      if (thickness > 0) {
        drawing.shapes.push_back(
            {SectionRole::bedding, true, slope.area(low, high, down, down + thickness)});
      } else {
        auto line = slope.area(low, high, down, down);
        line.resize(line.size() / 2);
        drawing.shapes.push_back({SectionRole::fabric, false, std::move(line)});
      }
    }
    drawing.notes.push_back({thickness > 0 ? SectionRole::bedding : SectionRole::fabric,
                             slope.at(from + share * (to - from), down + thickness / 2),
                             under.label});
    down += thickness;
    share += 0.08;
  }
}

/// Blocks are filled with the rock of the nearest part: the lowest at the toe, the highest at the
/// top.
void add_blocks(const TypicalSectionPicture& picture, Drawing& drawing) {
  for (const auto& block : picture.blocks) {
    std::vector<SectionPlace> outline;
    for (const auto& point : block.outline) outline.push_back(place_of(point));
    if (outline.size() != 4 || !std::all_of(outline.begin(), outline.end(), finite)) continue;
    SectionRole role = SectionRole::bare_rock;
    if (!picture.parts.empty()) {
      role = role_of((block.is_key ? picture.parts.back() : picture.parts.front()).kind);
    }
    drawing.notes.push_back({role, middle_of(outline), block.label});
    const auto [low, high] = std::minmax_element(
        outline.begin(), outline.end(), [](const auto& a, const auto& b) { return a.z < b.z; });
    const auto [left, right] = std::minmax_element(
        outline.begin(), outline.end(), [](const auto& a, const auto& b) { return a.x < b.x; });
    SectionPicture::RockLayer layer;
    layer.surface = {{Length::meters(left->x), Length::meters(high->z)},
                     {Length::meters(right->x), Length::meters(high->z)}};
    layer.thickness = Length::meters(high->z - low->z);
    if (auto strip = LayerStrip::make(layer)) {
      const double length = strip->length();
      drawing.rocks.push_back({role, std::move(*strip), 0, length, outline});
    }
    drawing.shapes.push_back({role, true, std::move(outline)});
  }
}

void add_dimension(const TypicalSectionPicture::Dimension& dimension, Drawing& drawing) {
  const auto from = place_of(dimension.from);
  const auto to = place_of(dimension.to);
  if (!finite(from) || !finite(to)) return;
  drawing.shapes.push_back({SectionRole::dimension, false, {from, to}});
  drawing.notes.push_back(
      {SectionRole::dimension, {(from.x + to.x) / 2, (from.z + to.z) / 2}, dimension.label});
}

void add_structures(const TypicalSectionPicture& picture, Drawing& drawing) {
  for (const auto& structure : picture.structures) {
    std::vector<SectionPlace> outline;
    for (const auto& point : structure.outline) outline.push_back(place_of(point));
    if (outline.size() < 3 || !std::all_of(outline.begin(), outline.end(), finite)) continue;
    // Named in its upper part, clear of the rock.
    auto at = middle_of(outline);
    for (const auto& place : outline) at.z = std::max(at.z, place.z);
    at.z = picture.in_plan ? middle_of(outline).z : 0.25 * middle_of(outline).z + 0.75 * at.z;
    drawing.notes.push_back({SectionRole::structure, at, structure.label});
    drawing.shapes.push_back({SectionRole::structure, true, std::move(outline)});
  }
}

/// As long as it is high, on the side away from the foot of the rock.
void add_conduit(const TypicalSectionPicture::Conduit& conduit, Drawing& drawing) {
  const auto end = place_of(conduit.invert);
  const double height = conduit.height.meters();
  if (!finite(end) || !std::isfinite(height) || !(height > 0)) return;
  const double far = end.x + (drawing.channel_on_right ? -1 : 1) * height;
  const double crown = end.z + height;
  // Open at its far end, and seen through.
  drawing.shapes.push_back({SectionRole::structure,
                            false,
                            {{far, end.z}, {end.x, end.z}, {end.x, crown}, {far, crown}}});
  drawing.notes.push_back(
      {SectionRole::structure, {(end.x + far) / 2, end.z + 0.75 * height}, conduit.label});
}

SectionWindow window_round(const Drawing& drawing, const TypicalSectionPicture& picture) {
  const SectionPlace first = drawing.shapes.front().points.front();
  SectionWindow window{first.x, first.x, first.z, first.z};
  for (const auto& shape : drawing.shapes) {
    for (const auto& place : shape.points) {
      window.left = std::min(window.left, place.x);
      window.right = std::max(window.right, place.x);
      window.bottom = std::min(window.bottom, place.z);
      window.top = std::max(window.top, place.z);
    }
  }
  for (const auto& level : picture.water_levels) {
    const double z = level.level.meters();
    if (std::isfinite(z)) window.top = std::max(window.top, z);
  }
  return window;
}

void add_lines_of_the_place(const TypicalSectionPicture& picture, Drawing& drawing) {
  std::vector<SectionPlace> ground;
  for (const auto& point : picture.ground) {
    if (finite(place_of(point))) ground.push_back(place_of(point));
  }
  for (const auto& level : picture.water_levels) {
    const double z = level.level.meters();
    if (!std::isfinite(z)) continue;
    for (const auto& [from, to] : wet_stretches(ground, z)) {
      drawing.shapes.push_back({SectionRole::water, false, {{from, z}, {to, z}}});
    }
  }
  drawing.shapes.insert(drawing.shapes.begin(), {SectionRole::ground, false, std::move(ground)});
}

/// An arrow beside the works in the direction of the flow, which goes to the right.
void add_flow_arrow(Drawing& drawing) {
  const auto& works = drawing.works;
  const double length = 0.18 * (works.right - works.left);
  const double z = works.top + 0.06 * (works.right - works.left);
  const SectionPlace tip{works.left + length, z};
  drawing.shapes.push_back({SectionRole::flow,
                            false,
                            {{works.left, z},
                             tip,
                             {tip.x - 0.25 * length, z + 0.1 * length},
                             tip,
                             {tip.x - 0.25 * length, z - 0.1 * length}}});
  drawing.notes.push_back({SectionRole::flow, {works.left + 0.4 * length, z}, "flow"});
  drawing.works.top = z + 0.1 * length;
}

/// Rock seen from above.
std::optional<Drawing> drawing_in_plan(const TypicalSectionPicture& picture) {
  Drawing drawing;
  drawing.title = picture.title;
  drawing.level = true;
  drawing.in_plan = true;
  add_blocks(picture, drawing);
  if (drawing.rocks.empty()) return std::nullopt;
  add_structures(picture, drawing);
  for (const auto& dimension : picture.dimensions) add_dimension(dimension, drawing);
  drawing.works = window_round(drawing, picture);
  add_flow_arrow(drawing);
  return drawing;
}

}  // namespace

std::string_view drawing_layer_name(SectionRole role) {
  constexpr std::string_view names[] = {
      "GROUND",           "WATER",        "ROCK-BARE", "ROCK-SOIL-FILLED",
      "ROCK-VOID-FILLED", "ROCK-GROUTED", "STONES",    "BEDDING",
      "GEOTEXTILE",       "TOPSOIL",      "BLANKET",   "STAKES",
      "TRENCHES",         "STRUCTURES",   "FLOW",      "DIMENSIONS"};
  return names[static_cast<std::size_t>(role)];
}

std::optional<TypicalSectionDrawing> typical_section_drawing(const TypicalSectionPicture& picture) {
  if (picture.in_plan) return drawing_in_plan(picture);
  SectionPicture::RockLayer layer;
  layer.surface = picture.surface;
  layer.thickness = picture.thickness;
  auto strip = LayerStrip::make(layer);
  if (!strip || picture.parts.empty()) return std::nullopt;
  Drawing drawing;
  drawing.title = picture.title;
  drawing.level = picture.level;
  drawing.channel_on_right = picture.surface.front().station > picture.surface.back().station;
  const BuiltSlope slope(std::move(*strip), drawing.channel_on_right);
  add_under(picture, slope, drawing);
  add_parts(picture, slope, drawing);
  if (drawing.rocks.empty()) return std::nullopt;
  add_blocks(picture, drawing);
  add_cover(picture, slope, drawing);
  add_structures(picture, drawing);
  if (picture.conduit) add_conduit(*picture.conduit, drawing);
  if (picture.toe_depth) add_dimension(*picture.toe_depth, drawing);
  for (const auto& dimension : picture.dimensions) add_dimension(dimension, drawing);
  for (const auto& note : picture.notes) {
    if (!finite(place_of(note.at))) continue;
    drawing.notes.push_back({SectionRole::dimension, place_of(note.at), note.label});
  }
  drawing.works = window_round(drawing, picture);
  const double thickness = picture.thickness.meters();
  // Clear of a key at the far end of level rock, and of what stands at the foot of a slope.
  const double share = picture.structures.empty() ? 0.35 : 0.25;
  const double at = (picture.level ? share : 0.62) * slope.length();
  drawing.thickness_from = slope.at(at, 0);
  drawing.thickness_to = slope.at(at, thickness);
  drawing.thickness_text = picture.thickness_text;
  drawing.slope_middle = slope.at(0.4 * slope.length(), thickness);
  if (picture.slope_at && finite(place_of(*picture.slope_at))) {
    drawing.slope_middle = place_of(*picture.slope_at);
    drawing.slope_middle.z -= 1.2 * thickness;
  }
  drawing.rise_per_run = picture.rise_per_run;
  drawing.slope_text = picture.slope_text;
  add_lines_of_the_place(picture, drawing);
  return drawing;
}

std::vector<std::vector<SectionPlace>> stones_in(const RockStretch& rock, double median,
                                                 std::size_t most, const std::string& seed) {
  SteadyNumbers numbers(seed);
  return packed_stones(rock.strip, rock.from, rock.to, median, most, numbers);
}

}  // namespace proofstone
