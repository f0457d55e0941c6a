#include "report/stones_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "engine/quantity/measure.h"
#include "report/picture_style.h"
#include "report/stone_shape.h"
#include "report/text_width.h"

namespace proofstone {

namespace {

constexpr double heading_height = 22;
constexpr double labels_height = 38;
constexpr double slot_gap = 12;
constexpr double rule_room = 64;
/// A stone is drawn a little wider than tall; see stone_outline.
constexpr double width_of_height = 1.3;

Length rule_length(UnitSystem units) {
  return units == UnitSystem::si ? Length::millimeters(300) : Length::inches(12);
}

/// One stone with its two lines of label.
struct DrawnStone {
  double size_m = 0;
  std::string name;
  std::string size_text;
  double label_width = 0;

  double slot(double pixels_per_meter) const {
    return std::max(size_m * pixels_per_meter * width_of_height, label_width) + slot_gap;
  }
};

struct DrawnRow {
  std::string label;
  std::vector<DrawnStone> stones;
  Angularity angularity = Angularity::angular;
};

std::vector<DrawnRow> rows_of(const StonesPicture& picture, UnitSystem units, double room) {
  std::vector<DrawnRow> rows;
  for (const auto& row : picture.rows) {
    DrawnRow drawn{row.label, {}, row.angularity};
    for (const auto& stone : row.stones) {
      const double size = stone.size.meters();
      if (!std::isfinite(size) || !(size > 0)) continue;
      DrawnStone one{size, shortened(stone.label, (room - slot_gap) / bold_width, font_size),
                     display(measure(stone.size), units, LengthUse::rock).text, 0};
      one.label_width = std::max(bold_width * text_width(one.name, font_size),
                                 text_width(one.size_text, font_size));
      drawn.stones.push_back(std::move(one));
    }
    rows.push_back(std::move(drawn));
  }
  return rows;
}

/// The width of each column: like stones of several rows stand below one another.
std::vector<double> column_widths(const std::vector<DrawnRow>& rows, double pixels_per_meter) {
  std::vector<double> widths;
  for (const auto& row : rows) {
    widths.resize(std::max(widths.size(), row.stones.size()));
    for (std::size_t i = 0; i < row.stones.size(); ++i) {
      widths[i] = std::max(widths[i], row.stones[i].slot(pixels_per_meter));
    }
  }
  return widths;
}

/// The largest scale at which every row fits into `room`, unless stones would become too small to
/// be seen; then rows are broken instead.
double scale_for(const std::vector<DrawnRow>& rows, Length rule, double room, double tallest) {
  double largest = rule.meters();
  for (const auto& row : rows) {
    for (const auto& stone : row.stones) largest = std::max(largest, stone.size_m);
  }
  const double at_most = std::min(tallest, room / width_of_height) / largest;
  const double at_least = std::min(at_most, 0.4 * tallest / largest);
  double scale = at_most;
  for (int i = 0; i < 60 && scale > at_least; ++i) {
    const auto columns = column_widths(rows, scale);
    if (std::accumulate(columns.begin(), columns.end(), 0.0) <= room) break;
    scale = std::max(at_least, scale * 0.95);
  }
  return scale;
}

/// A rule standing on the baseline, with marks at every inch or at every 50 mm.
void draw_rule(SvgCanvas& canvas, PixelPoint foot, double pixels_per_meter, UnitSystem units) {
  const Length rule = rule_length(units);
  const int marks = units == UnitSystem::si ? 6 : 12;
  const double height = rule.meters() * pixels_per_meter;
  constexpr double rule_width = 14;
  canvas.rectangle({foot.x, foot.y - height}, rule_width, height,
                   {Ink::paper, 1, Ink::ink, 1.25, {}, "rule"});
  for (int i = 1; i < marks; ++i) {
    const double y = foot.y - height * i / marks;
    const double length = i * 2 == marks ? 9 : 5;
    canvas.line({foot.x, y}, {foot.x + length, y}, {Ink::none, 1, Ink::ink, 1, {}, "rule"});
  }
  canvas.text({foot.x, foot.y + 16}, units == UnitSystem::si ? "300 mm" : "12 in",
              {font_size, TextAnchor::start, Ink::muted, false, false, {}});
}

/// Draws the stones of one line and returns where it ends.
double draw_line(SvgCanvas& canvas, const DrawnRow& row, std::size_t first, std::size_t last,
                 const std::vector<double>& columns, double scale, double top, UnitSystem units,
                 SteadyNumbers& numbers) {
  double tallest = rule_length(units).meters();
  for (std::size_t i = first; i < last; ++i) tallest = std::max(tallest, row.stones[i].size_m);
  const double baseline = top + tallest * scale;
  draw_rule(canvas, {4, baseline}, scale, units);
  double x = rule_room;
  for (std::size_t i = first; i < last; ++i) {
    const auto& stone = row.stones[i];
    const double slot = columns[i];
    const PixelPoint foot{x + slot / 2, baseline};
    const auto outline = stone_outline(foot, stone.size_m * scale, numbers);
    canvas.path(stone_path(outline, row.angularity),
                {i % 2 == 0 ? Ink::stone_2 : Ink::stone_1, 1, Ink::ink, 1.25, {}, "stone"});
    canvas.text({foot.x, baseline + 16}, stone.name,
                {font_size, TextAnchor::middle, Ink::ink, true, false, {}});
    canvas.text({foot.x, baseline + 32}, stone.size_text,
                {font_size, TextAnchor::middle, Ink::muted, false, false, {}});
    x += slot;
  }
  canvas.line({0, baseline}, {canvas.width(), baseline},
              {Ink::none, 1, Ink::muted, 1, {}, "baseline"});
  return baseline + labels_height;
}

}  // namespace

std::string draw(const StonesPicture& picture, UnitSystem units, double width) {
  SvgCanvas canvas(fmt::format("{}-{}", picture.id, svg_number(width)), width);
  SteadyNumbers numbers(picture.id);
  const double room = width - rule_room - 4;
  const auto rows = rows_of(picture, units, room);
  const double scale = scale_for(rows, rule_length(units), room, width < phone ? 120 : 170);

  const auto columns = column_widths(rows, scale);
  double y = 0;
  for (const auto& row : rows) {
    for (const auto& line : wrapped(row.label, (width - 8) / bold_width, font_size)) {
      canvas.text({4, y + 15}, line, {font_size, TextAnchor::start, Ink::ink, true, false, {}});
      y += heading_height;
    }
    if (row.stones.empty()) {
      canvas.text({4, y + 14}, "No size is known.",
                  {font_size, TextAnchor::start, Ink::muted, false, false, {}});
      y += heading_height + row_gap;
    }
    for (std::size_t first = 0; first < row.stones.size();) {
      std::size_t last = first;
      double used = 0;
      while (last < row.stones.size() && (last == first || used + columns[last] <= room + 0.01)) {
        used += columns[last++];
      }
      y = draw_line(canvas, row, first, last, columns, scale, y + 4, units, numbers) + row_gap;
      first = last;
    }
  }
  if (rows.empty()) {
    canvas.text({4, 15}, "No stones to show.",
                {font_size, TextAnchor::start, Ink::muted, false, false, {}});
    y = heading_height;
  }
  return canvas.finish(y, "stones-picture", picture.title, picture.description);
}

}  // namespace proofstone
