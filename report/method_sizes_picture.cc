#include "report/method_sizes_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>

#include "engine/quantity/measure.h"
#include "report/axis_ticks.h"
#include "report/label_placement.h"
#include "report/outcome_mark.h"
#include "report/picture_legend.h"
#include "report/picture_style.h"
#include "report/text_width.h"

namespace proofstone {

namespace {

using Row = MethodSizesPicture::Row;

constexpr double size_bar_height = 12;

/// The axis of sizes, logarithmic, in the unit shown.
struct SizeAxis {
  double left = 0;
  double right = 0;
  double smallest = 1;
  double largest = 10;

  double x(double size) const {
    const double share = std::log(size / smallest) / std::log(largest / smallest);
    return left + std::clamp(share, 0.0, 1.0) * (right - left);
  }
};

SizeAxis axis_of(const std::vector<const Row*>& rows, UnitSystem units, double width) {
  const Unit& unit = stone_size_unit(units);
  std::vector<double> sizes;
  for (const auto* row : rows) {
    sizes.push_back(row->required.in(unit));
    for (const auto& end : {row->class_least, row->class_most}) {
      if (end && is_size(*end)) sizes.push_back(end->in(unit));
    }
  }
  SizeAxis axis;
  axis.left = side_room;
  axis.right = width - side_room;
  if (sizes.empty()) return axis;
  const auto [low, high] = std::minmax_element(sizes.begin(), sizes.end());
  constexpr double margin = 1.15;
  axis.smallest = *low / margin;
  axis.largest = *high * margin;
  const double widen = std::sqrt(std::max(1.0, 4 * axis.smallest / axis.largest));
  axis.smallest /= widen;
  axis.largest *= widen;
  return axis;
}

std::string words_of(const Row& row, UnitSystem units) {
  auto words = fmt::format("{}: {} ≥ {}, {}", row.label, row.symbol,
                           display(measure(row.required), units, LengthUse::rock).text,
                           outcome_phrase(row.outcome));
  if (row.weight) words += fmt::format(", weight {} %", significant(100 * *row.weight, 3));
  if (row.governs) words += ", governs";
  if (!row.within_limits) {
    words += ", outside its published range";
  } else if (!row.counts) {
    words += ", shown only";
  }
  return words;
}

const Paint class_bar{Ink::stone_1, 1, Ink::stone_3, 1.25, {}, "class-bar"};

/// Draws one method and returns where it ends.
double draw_row(SvgCanvas& canvas, const Row& row, const SizeAxis& axis, UnitSystem units,
                double top) {
  const Unit& unit = stone_size_unit(units);
  double y = top;
  const double room = (canvas.width() - 2 * side_room) / bold_width;
  for (const auto& line : wrapped(words_of(row, units), room, font_size)) {
    canvas.text(
        {side_room, y + 13}, line,
        {font_size, TextAnchor::start, row.counts ? Ink::ink : Ink::muted, row.governs, false, {}});
    y += line_height;
  }
  const double middle = y + 4 + mark_size / 2;
  canvas.line({axis.left, middle}, {axis.right, middle}, {Ink::none, 1, Ink::line, 1, {}, "grid"});
  if (row.class_least && is_size(*row.class_least)) {
    const double from = axis.x(row.class_least->in(unit));
    const bool has_end = row.class_most && is_size(*row.class_most);
    const double to = has_end ? axis.x(row.class_most->in(unit)) : axis.right;
    canvas.rectangle({from, middle - size_bar_height / 2}, std::max(1.0, to - from),
                     size_bar_height, class_bar);
  }
  const double at = axis.x(row.required.in(unit));
  canvas.line({at, middle - 12}, {at, middle + 12},
              {Ink::none, 1, outcome_ink(row.outcome), 2, row.counts ? "" : "3 2", "required"});
  draw_outcome_mark(canvas, row.outcome, {at, middle}, mark_size);
  return middle + 12 + row_gap;
}

double draw_axis(SvgCanvas& canvas, const SizeAxis& axis, UnitSystem units, double y) {
  auto ticks = stone_size_ticks(axis.smallest, axis.largest, units);
  if (ticks.empty()) ticks = even_ticks(axis.smallest, axis.largest, 5);
  std::sort(ticks.begin(), ticks.end(), [](const AxisTick& a, const AxisTick& b) {
    return std::tie(a.rank, a.value) < std::tie(b.rank, b.value);
  });
  canvas.line({axis.left, y}, {axis.right, y}, {Ink::none, 1, Ink::line, 1.5, {}, "axis"});
  LabelPlacement labels({0, y, canvas.width(), y + 24});
  for (const auto& tick : ticks) {
    const double x = axis.x(tick.value);
    canvas.line({x, y}, {x, y + 4}, {Ink::none, 1, Ink::line, 1, {}, "axis"});
    const PixelPoint baseline{x, y + 18};
    const double room = text_width(tick.label, font_size) + 8;
    if (!labels.place(room, font_size, {{baseline, TextAnchor::middle}})) continue;
    canvas.text(baseline, tick.label,
                {font_size, TextAnchor::middle, Ink::muted, false, false, {}});
  }
  canvas.text({axis.right, y + 37}, fmt::format("Stone size, {}", stone_size_unit(units).symbol),
              {font_size, TextAnchor::end, Ink::muted, false, false, {}});
  return y + 46;
}

double draw_names(SvgCanvas& canvas, const MethodSizesPicture& picture, double top) {
  const std::vector<LegendEntry> entries{
      {[](SvgCanvas& on, PixelPoint centre) {
         on.rectangle({centre.x - 14, centre.y - size_bar_height / 2}, 28, size_bar_height,
                      class_bar);
       },
       fmt::format("{}: least to largest at that percent", picture.class_name)},
      {[](SvgCanvas& on, PixelPoint centre) {
         on.line({centre.x, centre.y - 8}, {centre.x, centre.y + 8},
                 {Ink::none, 1, Ink::ink, 2, {}, "required"});
       },
       "size asked for; the bar must begin at or beyond it"}};
  return draw_legend(canvas, entries, side_room, canvas.width() - side_room, top);
}

}  // namespace

std::string draw(const MethodSizesPicture& picture, UnitSystem units, double width) {
  SvgCanvas canvas(fmt::format("{}-{}", picture.id, svg_number(width)), width);
  std::vector<const Row*> rows;
  for (const auto& row : picture.rows) {
    if (is_size(row.required)) rows.push_back(&row);
  }
  const auto axis = axis_of(rows, units, width);
  double y = 4;
  for (const auto* row : rows) y = draw_row(canvas, *row, axis, units, y);
  if (rows.empty()) {
    canvas.text({side_room, y + 13}, "No method gives a size here.",
                {font_size, TextAnchor::start, Ink::muted, false, false, {}});
    y += line_height + row_gap;
  }
  y = draw_axis(canvas, axis, units, y);
  y = draw_names(canvas, picture, y);
  return canvas.finish(y, "method-sizes-picture", picture.title, picture.description);
}

}  // namespace proofstone
