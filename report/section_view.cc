#include "report/section_view.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>

#include "engine/quantity/measure.h"
#include "report/picture_style.h"
#include "report/text_width.h"

namespace proofstone {

namespace {

constexpr std::size_t most_stones_of_section = 600;
constexpr double smallest_stone_px = 6;

const Paint governing_level{Ink::none, 1, Ink::river, 2, {}, "water-level governing"};
const Paint other_level{Ink::none, 1, Ink::river, 1.5, "6 4", "water-level"};
const Paint soil_stroke{Ink::none, 1, Ink::stone_3, 1, {}, "soil"};
const Paint layer_back{Ink::paper, 1, Ink::ink, 1, {}, "layer"};
const Paint layer_tint{Ink::stone_2, 1, Ink::ink, 1, {}, "layer"};

void draw_water(SvgCanvas& canvas, const DrawnSection& section, const SectionView& view) {
  const PixelBox box = view.box();
  for (const auto& level : section.levels) {
    if (!level.governing) continue;
    for (const auto& [from, to] : wet_stretches(section.ground, level.z)) {
      const PixelPoint left = view.at({from, level.z});
      const PixelPoint right = view.at({to, level.z});
      canvas.rectangle(left, right.x - left.x, std::max(0.0, box.bottom - left.y), water_fill);
    }
  }
}

/// Short strokes under the ground line, as draughtsmen mark soil.
void draw_soil_strokes(SvgCanvas& canvas, const std::vector<PixelPoint>& ground) {
  constexpr double apart = 22;
  double rest = apart / 2;
  std::string strokes;
  for (std::size_t i = 0; i + 1 < ground.size(); ++i) {
    const PixelPoint a = ground[i];
    const PixelPoint b = ground[i + 1];
    const double run = b.x - a.x;
    double from = rest;
    for (; from < run && strokes.size() < 20000; from += apart) {
      const double y = a.y + (b.y - a.y) * from / run;
      for (const double k : {0.0, 1.0, 2.0}) {
        strokes += fmt::format("M{} {}l-5 7", svg_number(a.x + from + 4 * k),
                               svg_number(y + 4 + (b.y - a.y) / run * 4 * k));
      }
    }
    rest = from - run;
  }
  canvas.path(strokes, soil_stroke);
}

void draw_ground(SvgCanvas& canvas, const DrawnSection& section, const SectionView& view) {
  auto line = view.line(section.ground);
  if (line.size() < 2) return;
  auto area = line;
  const double bottom = view.box().bottom + 2;
  area.push_back({line.back().x, bottom});
  area.push_back({line.front().x, bottom});
  canvas.polygon(area, ground_fill);
  draw_soil_strokes(canvas, line);
  canvas.polyline(line, ground_line);
}

void draw_layer(SvgCanvas& canvas, const DrawnSection::Layer& layer, const SectionView& view,
                const std::string& seed) {
  const auto outline = view.line(layer.strip.outline());
  const auto stretch = layer.strip.stretch_in(view.window);
  if (!stretch) return;
  if (!stones_can_be_seen(layer, view)) {
    canvas.polygon(outline, layer_tint);
    return;
  }
  SteadyNumbers numbers(seed);
  canvas.polygon(outline, layer_back);
  canvas.begin_clipped_group("rock", outline);
  constexpr Ink stone_inks[] = {Ink::stone_2, Ink::stone_1, Ink::stone_2};
  std::size_t number = 0;
  for (const auto& stone : packed_stones(layer.strip, stretch->first, stretch->second, layer.median,
                                         most_stones_of_section, numbers)) {
    canvas.path(stone_path(view.line(stone), layer.angularity),
                {stone_inks[number++ % 3], 1, Ink::ink, 0.75, {}, "stone"});
  }
  canvas.end_group();
}

/// The mark of a water level: a triangle standing on the line.
void draw_level_mark(SvgCanvas& canvas, PixelPoint tip) {
  canvas.polygon({{tip.x - 5, tip.y - 9}, {tip.x + 5, tip.y - 9}, tip},
                 {Ink::paper, 1, Ink::river, 1.5, {}, "level-mark"});
}

class ViewWords {
 public:
  ViewWords(SvgCanvas& canvas, const DrawnSection& section, const SectionView& view)
      : canvas_(canvas), section_(section), view_(view), placement_(view.box()) {
    placement_.take_line(view.line(section.ground), 3);
    for (const auto& layer : section.layers) {
      auto outline = layer.strip.outline();
      outline.push_back(outline.front());
      placement_.take_line(view.line(outline), 3);
    }
  }

  void draw_levels(bool with_names) {
    for (const auto& level : section_.levels) {
      for (const auto& [from, to] : wet_stretches(section_.ground, level.z)) {
        placement_.take_line({view_.at({from, level.z}), view_.at({to, level.z})}, 2);
      }
    }
    for (const auto& level : section_.levels) draw_level(level, with_names);
  }

  /// The names for which there was no room.
  const std::vector<LegendEntry>& legend() const { return legend_; }

  /// The name of a layer in the soil below it, tied to it by a line.
  void name_layer(const DrawnSection::Layer& layer) {
    const auto stretch = layer.strip.stretch_in(view_.window);
    if (!stretch) return;
    for (const double share : {0.5, 0.3, 0.7, 0.15, 0.85}) {
      const double along = stretch->first + share * (stretch->second - stretch->first);
      const PixelPoint end = view_.at(layer.strip.at(along, layer.strip.thickness()));
      std::vector<LabelPlace> places;
      for (const double drop : {24.0, 34.0, 48.0, 64.0, 84.0, 110.0}) {
        places.push_back({{end.x, end.y + drop}, TextAnchor::middle});
        places.push_back({{end.x - 4, end.y + drop}, TextAnchor::start});
        places.push_back({{end.x + 4, end.y + drop}, TextAnchor::end});
      }
      const auto place =
          placement_.place(text_width(layer.label, font_size) * bold_width, font_size, places);
      if (!place) continue;
      canvas_.line(end, {end.x, place->baseline.y - 12}, {Ink::none, 1, Ink::ink, 1, {}, "leader"});
      canvas_.text(place->baseline, layer.label,
                   {font_size, place->anchor, Ink::ink, true, false, "label"});
      return;
    }
    legend_.push_back({[](SvgCanvas& to, PixelPoint centre) {
                         to.rectangle({centre.x - 14, centre.y - 6}, 28, 12, layer_tint);
                       },
                       layer.label});
  }

  /// The thickness of a layer between two arrows, square to it.
  void dimension_layer(const DrawnSection::Layer& layer) {
    const auto stretch = layer.strip.stretch_in(view_.window);
    if (!stretch) return;
    for (const double share : {0.5, 0.35, 0.65, 0.2, 0.8}) {
      const double along = stretch->first + share * (stretch->second - stretch->first);
      const PixelPoint top = view_.at(layer.strip.at(along, 0));
      const PixelPoint end = view_.at(layer.strip.at(along, layer.strip.thickness()));
      const double length = std::max(
          1.0, std::sqrt((end.x - top.x) * (end.x - top.x) + (end.y - top.y) * (end.y - top.y)));
      const PixelPoint step{(end.x - top.x) / length, (end.y - top.y) / length};
      const PixelPoint beyond{end.x + 26 * step.x, end.y + 26 * step.y};
      const std::string text = "thickness " + layer.thickness_text;
      const auto place = placement_.place(text_width(text, font_size) * bold_width, font_size,
                                          {{{beyond.x + 4, beyond.y + 10}, TextAnchor::middle},
                                           {{beyond.x + 4, beyond.y + 10}, TextAnchor::start},
                                           {{beyond.x - 4, beyond.y + 10}, TextAnchor::end}});
      if (!place) continue;
      draw_dimension(top, end, beyond, step);
      canvas_.text(place->baseline, text,
                   {font_size, place->anchor, Ink::ink, true, false, "label"});
      return;
    }
  }

 private:
  void draw_level(const DrawnSection::Level& level, bool with_name) {
    const PixelBox box = view_.box();
    const auto stretches = wet_stretches(section_.ground, level.z);
    std::vector<LabelPlace> places;
    double widest = 0;
    PixelPoint mark;
    for (const auto& [from, to] : stretches) {
      const PixelPoint left = view_.at({from, level.z});
      const PixelPoint right = view_.at({to, level.z});
      canvas_.line(left, right, level.governing ? governing_level : other_level);
      const double shown_from = std::max(left.x, box.left);
      const double shown_to = std::min(right.x, box.right);
      if (shown_to - shown_from > widest) {
        widest = shown_to - shown_from;
        mark = {shown_from + 0.5 * widest, left.y};
      }
      for (const double share : {0.5, 0.3, 0.7, 0.15, 0.85}) {
        const double x = shown_from + share * (shown_to - shown_from);
        for (const double dy : {-5.0, 15.0}) {
          places.push_back({{x + 10, left.y + dy}, TextAnchor::start});
          places.push_back({{x - 10, left.y + dy}, TextAnchor::end});
          places.push_back({{x, left.y + dy}, TextAnchor::middle});
        }
      }
    }
    if (with_name) name_level(level, places);
    if (!(widest > 12) || mark.y < box.top || mark.y > box.bottom) return;
    const PixelBox mark_box{mark.x - 6, mark.y - 10, mark.x + 6, mark.y - 1.5};
    if (placement_.is_free(mark_box)) draw_level_mark(canvas_, mark);
  }

  void name_level(const DrawnSection::Level& level, const std::vector<LabelPlace>& places) {
    const double text_room = text_width(level.text, font_size) * bold_width;
    if (const auto place = placement_.place(text_room, font_size, places)) {
      canvas_.text(place->baseline, level.text,
                   {font_size, place->anchor, Ink::river, level.governing, true, "label"});
      return;
    }
    legend_.push_back({[governing = level.governing](SvgCanvas& to, PixelPoint centre) {
                         to.line({centre.x - 14, centre.y}, {centre.x + 14, centre.y},
                                 governing ? governing_level : other_level);
                       },
                       level.text});
  }

  void draw_dimension(PixelPoint top, PixelPoint end, PixelPoint beyond, PixelPoint step) {
    const Paint halo{Ink::none, 1, Ink::paper, 4, {}, "dimension-halo"};
    const Paint line{Ink::none, 1, Ink::ink, 1.5, {}, "dimension"};
    canvas_.line(top, end, halo);
    canvas_.line(top, beyond, line);
    const auto arrow = [&](PixelPoint tip, double direction) {
      const PixelPoint back{tip.x - direction * 8 * step.x, tip.y - direction * 8 * step.y};
      canvas_.polygon({tip,
                       {back.x - 3.5 * step.y, back.y + 3.5 * step.x},
                       {back.x + 3.5 * step.y, back.y - 3.5 * step.x}},
                      {Ink::ink, 1, Ink::paper, 0.75, {}, "dimension"});
    };
    arrow(top, -1);
    arrow(end, 1);
  }

  SvgCanvas& canvas_;
  const DrawnSection& section_;
  const SectionView& view_;
  LabelPlacement placement_;
  std::vector<LegendEntry> legend_;
};

}  // namespace

std::vector<std::pair<double, double>> wet_stretches(const std::vector<SectionPlace>& ground,
                                                     double level) {
  std::vector<std::pair<double, double>> stretches;
  const auto add = [&](double from, double to) {
    if (!stretches.empty() && from - stretches.back().second < 1e-9) {
      stretches.back().second = to;
    } else if (to > from) {
      stretches.emplace_back(from, to);
    }
  };
  for (std::size_t i = 0; i + 1 < ground.size(); ++i) {
    const SectionPlace a = ground[i];
    const SectionPlace b = ground[i + 1];
    if (a.z >= level && b.z >= level) continue;
    const auto crossing = [&] { return a.x + (level - a.z) / (b.z - a.z) * (b.x - a.x); };
    add(a.z < level ? a.x : crossing(), b.z < level ? b.x : crossing());
  }
  return stretches;
}

std::vector<PixelPoint> SectionView::line(const std::vector<SectionPlace>& places) const {
  std::vector<PixelPoint> points;
  points.reserve(places.size());
  for (const auto& place : places) points.push_back(at(place));
  return points;
}

DrawnSection drawn_section(const SectionPicture& picture, UnitSystem units) {
  DrawnSection section;
  for (const auto& point : picture.ground) {
    const SectionPlace place{point.station.meters(), point.elevation.meters()};
    if (std::isfinite(place.x) && std::isfinite(place.z)) section.ground.push_back(place);
  }
  for (const auto& level : picture.water_levels) {
    const double z = level.level.meters();
    if (!std::isfinite(z)) continue;
    section.levels.push_back(
        {fmt::format("{}, {}", level.name, display(measure(level.level), units).text), z,
         level.governing});
  }
  std::sort(section.levels.begin(), section.levels.end(), [](const auto& a, const auto& b) {
    return std::tie(b.z, a.text) < std::tie(a.z, b.text);  // the same on every machine
  });
  for (const auto& layer : picture.layers) {
    auto strip = LayerStrip::make(layer);
    if (!strip) continue;
    const double median = layer.median_stone.meters();
    section.layers.push_back({std::move(*strip), layer.label,
                              display(measure(layer.thickness), units, LengthUse::rock).text,
                              display(measure(layer.median_stone), units, LengthUse::rock).text,
                              std::isfinite(median) && median > 0 ? median : 0, layer.angularity});
  }
  return section;
}

bool stones_can_be_seen(const DrawnSection::Layer& layer, const SectionView& view) {
  if (!(layer.median * std::min(view.pixels_across, view.pixels_up) >= smallest_stone_px)) {
    return false;
  }
  const auto stretch = layer.strip.stretch_in(view.window);
  return stretch && expected_stones(layer.strip, stretch->first, stretch->second, layer.median) <=
                        static_cast<double>(most_stones_of_section);
}

std::vector<LegendEntry> draw_view(SvgCanvas& canvas, const DrawnSection& section,
                                   const SectionView& view, SectionWords words,
                                   const std::string& seed) {
  canvas.begin_clipped_group("section", corners_of(view.box()));
  draw_water(canvas, section, view);
  draw_ground(canvas, section, view);
  for (std::size_t i = 0; i < section.layers.size(); ++i) {
    draw_layer(canvas, section.layers[i], view, fmt::format("{}/{}", seed, i));
  }
  ViewWords writer(canvas, section, view);
  const bool names = words == SectionWords::levels_and_layers;
  writer.draw_levels(names);
  for (const auto& layer : section.layers) {
    if (names) {
      writer.name_layer(layer);
    } else {
      writer.dimension_layer(layer);
    }
  }
  canvas.end_group();
  return writer.legend();
}

}  // namespace proofstone
