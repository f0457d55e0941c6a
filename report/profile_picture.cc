#include "report/profile_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/quantity/measure.h"
#include "report/ground_axes.h"
#include "report/picture_style.h"
#include "report/text_width.h"

namespace proofstone {

namespace {

const Paint largest_line{Ink::none, 1, Ink::river, 2, {}, "water-level governing"};
const Paint other_line{Ink::none, 1, Ink::river, 1.5, "6 4", "water-level"};
const Paint critical_line{Ink::none, 1, Ink::muted, 1.25, "2 3", "critical-level"};
const Paint bank_line{Ink::none, 1, Ink::stone_3, 1.5, "9 4", "bank-line"};
const Paint place_line{Ink::none, 1, Ink::line, 1, {}, "section-place"};
const Paint jump_line{Ink::none, 1, Ink::ochre, 2.5, {}, "jump"};

using Places = std::vector<SectionPlace>;

/// A profile as it is drawn: in metres, without what cannot be drawn.
struct DrawnProfile {
  struct Water {
    std::string text;
    bool largest = false;
    Places surface;
    Places critical;
    std::vector<std::pair<SectionPlace, SectionPlace>> jumps;  ///< low and high end
  };
  Places bed;
  Places bank;
  std::vector<std::pair<double, std::string>> sections;  ///< surveyed ones by distance
  std::vector<Water> water;                              ///< largest last
};

void add_if_finite(Places& places, Length distance, Length elevation) {
  const SectionPlace place{distance.meters(), elevation.meters()};
  if (std::isfinite(place.x) && std::isfinite(place.z)) places.push_back(place);
}

DrawnProfile drawn_profile(const ProfilePicture& picture) {
  DrawnProfile drawn;
  for (const auto& place : picture.places) {
    add_if_finite(drawn.bed, place.distance, place.bed);
    add_if_finite(drawn.bank, place.distance, place.lower_bank);
    if (!place.name.empty() && std::isfinite(place.distance.meters())) {
      drawn.sections.emplace_back(place.distance.meters(), place.name);
    }
  }
  for (const auto& line : picture.water_lines) {
    DrawnProfile::Water water;
    water.text = line.name;
    water.largest = line.largest;
    for (const auto& point : line.points) {
      add_if_finite(water.surface, point.distance, point.level);
      add_if_finite(water.critical, point.distance, point.critical);
    }
    for (const auto& jump : line.jumps) {
      Places ends;
      add_if_finite(ends, jump.distance, jump.level_before);
      add_if_finite(ends, jump.distance, jump.level_after);
      if (ends.size() == 2) water.jumps.emplace_back(ends[0], ends[1]);
    }
    if (water.surface.size() > 1) drawn.water.push_back(std::move(water));
  }
  return drawn;
}

SectionWindow window_of(const DrawnProfile& drawn) {
  SectionWindow window{drawn.bed.front().x, drawn.bed.front().x, drawn.bed.front().z,
                       drawn.bed.front().z};
  const auto reach = [&](const Places& places) {
    for (const auto& place : places) {
      window.left = std::min(window.left, place.x);
      window.right = std::max(window.right, place.x);
      window.bottom = std::min(window.bottom, place.z);
      window.top = std::max(window.top, place.z);
    }
  };
  reach(drawn.bed);
  reach(drawn.bank);
  for (const auto& water : drawn.water) {
    reach(water.surface);
    if (water.largest) reach(water.critical);
  }
  window.right = std::max(window.right, window.left + 0.01);
  window.top = std::max(window.top, window.bottom + 0.01);
  return window;
}

SectionView view_of(const DrawnProfile& drawn, double width) {
  SectionView view;
  view.window = window_of(drawn);
  view.pixels_across = (width - axis_room - 12) / (view.window.right - view.window.left);
  const double height = width < phone ? 230 : 320;
  view.pixels_up = (height - 50) / (view.window.top - view.window.bottom);
  // Soil below the bed, and air above the highest level for its name.
  view.window.bottom -= 26 / view.pixels_up;
  view.window.top += 24 / view.pixels_up;
  // Above it stand the title of the axis and, in a line of their own, the sections' names.
  view.corner = {axis_room, 46};
  return view;
}

void draw_filled(SvgCanvas& canvas, std::vector<PixelPoint> line, double bottom,
                 const Paint& paint) {
  if (line.size() < 2) return;
  const double left = line.front().x;
  const double right = line.back().x;
  line.push_back({right, bottom});
  line.push_back({left, bottom});
  canvas.polygon(line, paint);
}

void draw_ground(SvgCanvas& canvas, const DrawnProfile& drawn, const SectionView& view) {
  const PixelBox box = view.box();
  for (const auto& water : drawn.water) {
    if (water.largest) draw_filled(canvas, view.line(water.surface), box.bottom, water_fill);
  }
  for (const auto& [distance, name] : drawn.sections) {
    const double x = view.at({distance, 0}).x;
    canvas.line({x, box.top}, {x, box.bottom}, place_line);
  }
  draw_filled(canvas, view.line(drawn.bed), box.bottom, ground_fill);
  canvas.polyline(view.line(drawn.bed), ground_line);
  canvas.polyline(view.line(drawn.bank), bank_line);
}

void draw_water(SvgCanvas& canvas, const DrawnProfile& drawn, const SectionView& view) {
  for (const auto& water : drawn.water) {
    if (water.largest) canvas.polyline(view.line(water.critical), critical_line);
    canvas.polyline(view.line(water.surface), water.largest ? largest_line : other_line);
    for (const auto& [low, high] : water.jumps) canvas.line(view.at(low), view.at(high), jump_line);
  }
}

/// The names of the surveyed sections above the picture, where there is room.
void name_sections(SvgCanvas& canvas, const DrawnProfile& drawn, const SectionView& view) {
  LabelPlacement placement({0, 20, canvas.width(), view.corner.y});
  const double baseline = view.corner.y - 9;
  for (const auto& [distance, name] : drawn.sections) {
    const double x = view.at({distance, 0}).x;
    const std::string text = shortened(name, 130, font_size);
    const double room = text_width(text, font_size) + 10;
    const auto place = placement.place(room, font_size,
                                       {{{x, baseline}, TextAnchor::middle},
                                        {{x + 2, baseline}, TextAnchor::start},
                                        {{x, baseline}, TextAnchor::end}});
    if (!place) continue;
    canvas.text(place->baseline, text,
                {font_size, place->anchor, Ink::muted, false, false, "section-name"});
  }
}

/// The names of the water lines beside them; what finds no room goes into the legend.
std::vector<LegendEntry> name_water(SvgCanvas& canvas, const DrawnProfile& drawn,
                                    const SectionView& view) {
  std::vector<LegendEntry> legend;
  LabelPlacement placement(view.box());
  placement.take_line(view.line(drawn.bed), 3);
  placement.take_line(view.line(drawn.bank), 3);
  for (const auto& water : drawn.water) {
    placement.take_line(view.line(water.surface), 3);
    if (water.largest) placement.take_line(view.line(water.critical), 2);
  }
  for (auto water = drawn.water.rbegin(); water != drawn.water.rend(); ++water) {
    std::vector<LabelPlace> places;
    for (const double share : {0.5, 0.3, 0.7, 0.1, 0.9}) {
      const auto index =
          static_cast<std::size_t>(share * static_cast<double>(water->surface.size() - 1));
      const PixelPoint at = view.at(water->surface[index]);
      for (const double dy : {-7.0, 17.0}) {
        places.push_back({{at.x, at.y + dy}, TextAnchor::middle});
        places.push_back({{at.x + 4, at.y + dy}, TextAnchor::start});
        places.push_back({{at.x - 4, at.y + dy}, TextAnchor::end});
      }
    }
    const auto place =
        placement.place(text_width(water->text, font_size) * bold_width, font_size, places);
    if (place) {
      canvas.text(place->baseline, water->text,
                  {font_size, place->anchor, Ink::river, water->largest, true, "label"});
    } else {
      legend.push_back(line_entry(water->largest ? largest_line : other_line, water->text));
    }
  }
  return legend;
}

void add_fixed_entries(std::vector<LegendEntry>& legend, const DrawnProfile& drawn) {
  bool jumps = false;
  std::string largest;
  for (const auto& water : drawn.water) {
    jumps = jumps || !water.jumps.empty();
    if (water.largest) largest = water.text;
  }
  legend.push_back(line_entry(bank_line, "lower bank"));
  if (!largest.empty()) {
    legend.push_back(line_entry(critical_line, "critical level, " + largest));
  }
  if (jumps) {
    legend.push_back({[](SvgCanvas& to, PixelPoint centre) {
                        to.line({centre.x, centre.y - 7}, {centre.x, centre.y + 7}, jump_line);
                      },
                      "hydraulic jump"});
  }
}

}  // namespace

std::string draw(const ProfilePicture& picture, UnitSystem units, double width) {
  SvgCanvas canvas(fmt::format("{}-{}", picture.id, svg_number(width)), width);
  const auto drawn = drawn_profile(picture);
  if (drawn.bed.size() < 2 || drawn.water.empty()) {
    canvas.text({4, 18}, "No profile to show.", quiet_text);
    return canvas.finish(28, "profile-picture", picture.title, picture.description);
  }
  const SectionView view = view_of(drawn, width);
  draw_ground(canvas, drawn, view);
  draw_water(canvas, drawn, view);
  name_sections(canvas, drawn, view);
  auto legend = name_water(canvas, drawn, view);
  add_fixed_entries(legend, drawn);
  draw_ground_axes(canvas, view, units, "Distance downstream");
  double y = view.box().bottom + 58;
  const std::string said = fmt::format(
      "flows from left to right; heights drawn {} times as large "
      "as lengths",
      significant(view.pixels_up / view.pixels_across, 2));
  for (const auto& line : wrapped(said, width - 8, font_size)) {
    canvas.text({0, y}, line, quiet_text);
    y += 17;
  }
  const double end = draw_legend(canvas, legend, 0, width - 4, y);
  return canvas.finish(end, "profile-picture", picture.title, picture.description);
}

}  // namespace proofstone
