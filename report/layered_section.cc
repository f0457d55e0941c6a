#include "report/layered_section.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <nlohmann/json.hpp>
#include <tuple>

#include "report/axis_ticks.h"
#include "report/typical_section_drawing.h"

namespace proofstone {

namespace {

using nlohmann::json;

constexpr std::size_t most_stones = 2000;

/// Writes places in the unit of the drawing.
class Writer {
 public:
  Writer(LayeredDrawing& drawing, double si_factor) : drawing_(drawing), factor_(si_factor) {}

  void line(std::string_view layer, const std::vector<SectionPlace>& places, bool closed) {
    LayeredLine line;
    line.layer = layer;
    line.closed = closed;
    for (const auto& place : places) {
      if (std::isfinite(place.x) && std::isfinite(place.z)) line.points.push_back(at(place));
    }
    if (line.points.size() > 1) drawing_.lines.push_back(std::move(line));
  }
  void text(std::string_view layer, SectionPlace place, double height, const std::string& words) {
    drawing_.texts.push_back({std::string(layer), at(place), height / factor_, words});
  }

 private:
  DrawingPlace at(SectionPlace place) const { return {place.x / factor_, place.z / factor_}; }

  LayeredDrawing& drawing_;
  double factor_;
};

bool is_inside(SectionPlace place, const std::vector<SectionPlace>& outline) {
  bool inside = false;
  for (std::size_t i = 0, j = outline.size() - 1; i < outline.size(); j = i++) {
    const auto& a = outline[i];
    const auto& b = outline[j];
    const bool crosses = (a.z > place.z) != (b.z > place.z);
    if (crosses && place.x < (b.x - a.x) * (place.z - a.z) / (b.z - a.z) + a.x) inside = !inside;
  }
  return inside;
}

void write_stones(const TypicalSectionPicture& picture, const TypicalSectionDrawing& section,
                  Writer& writer) {
  const double median = picture.median_stone.meters();
  if (!(median > 0)) return;
  for (std::size_t i = 0; i < section.rocks.size(); ++i) {
    const auto& rock = section.rocks[i];
    if (expected_stones(rock.strip, rock.from, rock.to, median) >
        static_cast<double>(most_stones)) {
      continue;
    }
    for (const auto& stone :
         stones_in(rock, median, most_stones, fmt::format("{}/{}", picture.id, i))) {
      const bool whole = std::all_of(stone.begin(), stone.end(), [&](SectionPlace place) {
        return is_inside(place, rock.outline);
      });
      if (whole) writer.line(drawing_layer_name(SectionRole::stone), stone, true);
    }
  }
}

/// Words in a column beside the works on the side of the channel, each with its line.
void write_notes(const TypicalSectionPicture& picture, const TypicalSectionDrawing& section,
                 Writer& writer) {
  struct Note {
    SectionPlace at;
    std::string text;
  };
  std::vector<Note> notes;
  const auto& works = section.works;
  const double across = works.right - works.left;
  for (const auto& note : section.notes) notes.push_back({note.at, note.text});
  const double edge = section.channel_on_right ? works.right : works.left;
  for (const auto& level : picture.water_levels) {
    if (std::isfinite(level.level.si()))
      notes.push_back({{edge, level.level.meters()}, level.label});
  }
  if (!section.in_plan) {
    notes.push_back({section.thickness_to, "thickness " + section.thickness_text});
  }
  if (!section.slope_text.empty()) {
    notes.push_back({section.slope_middle, "slope " + section.slope_text + "H:1V"});
  }
  std::sort(notes.begin(), notes.end(), [](const Note& a, const Note& b) {
    return std::tie(b.at.z, b.at.x, b.text) < std::tie(a.at.z, a.at.x, a.text);
  });
  const double height = std::max(0.02 * across, 1e-3);
  const double column =
      section.channel_on_right ? works.right + 0.15 * across : works.left - 1.0 * across;
  double z = works.top + height * static_cast<double>(notes.size()) / 4;
  for (const auto& note : notes) {
    z = std::min(z - 1.9 * height, note.at.z);
    writer.line("TEXT", {{column - 0.5 * height, z + 0.4 * height}, note.at}, false);
    writer.text("TEXT", {column, z}, height, note.text);
  }
}

}  // namespace

std::optional<LayeredDrawing> layered_section(const TypicalSectionPicture& picture,
                                              UnitSystem units) {
  const auto section = typical_section_drawing(picture);
  if (!section) return std::nullopt;
  const Unit& unit = ground_unit(units);
  LayeredDrawing drawing;
  drawing.title = picture.title;
  drawing.unit = unit.symbol;
  Writer writer(drawing, unit.si_factor);
  for (const auto& shape : section->shapes) {
    writer.line(drawing_layer_name(shape.role), shape.points, shape.closed);
  }
  if (!section->in_plan) {
    writer.line(drawing_layer_name(SectionRole::dimension),
                {section->thickness_from, section->thickness_to}, false);
  }
  write_stones(picture, *section, writer);
  write_notes(picture, *section, writer);
  return drawing;
}

void place_below(LayeredDrawing& drawing, const LayeredDrawing& other) {
  double lowest = std::numeric_limits<double>::infinity();
  double left = lowest;
  double highest = -lowest;
  double left_of_other = lowest;
  double tallest = 0;
  const auto places = [](const LayeredDrawing& of, const auto& take) {
    for (const auto& line : of.lines) {
      for (const auto& point : line.points) take(point);
    }
    for (const auto& text : of.texts) take(text.at);
  };
  places(drawing, [&](const DrawingPlace& at) {
    lowest = std::min(lowest, at.y);
    left = std::min(left, at.x);
  });
  places(other, [&](const DrawingPlace& at) {
    highest = std::max(highest, at.y);
    left_of_other = std::min(left_of_other, at.x);
  });
  if (!std::isfinite(lowest) || !std::isfinite(highest)) return;
  for (const auto& text : other.texts) tallest = std::max(tallest, text.height);
  const double right = left - left_of_other;
  const double up = lowest - highest - 5 * tallest;
  drawing.texts.push_back({"TEXT", {left, lowest - 3 * tallest}, tallest, other.title});
  for (auto line : other.lines) {
    for (auto& point : line.points) point = {point.x + right, point.y + up};
    drawing.lines.push_back(std::move(line));
  }
  for (auto text : other.texts) {
    text.at = {text.at.x + right, text.at.y + up};
    drawing.texts.push_back(std::move(text));
  }
}

json layered_drawing_json(const LayeredDrawing& drawing) {
  json lines = json::array();
  for (const auto& line : drawing.lines) {
    json points = json::array();
    for (const auto& place : line.points) points.push_back({place.x, place.y});
    lines.push_back({{"layer", line.layer}, {"closed", line.closed}, {"points", points}});
  }
  json texts = json::array();
  for (const auto& text : drawing.texts) {
    texts.push_back({{"layer", text.layer},
                     {"at", {text.at.x, text.at.y}},
                     {"height", text.height},
                     {"text", text.text}});
  }
  return {{"title", drawing.title}, {"unit", drawing.unit}, {"lines", lines}, {"texts", texts}};
}

}  // namespace proofstone
