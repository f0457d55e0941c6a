#include "report/mix_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/quantity/measure.h"
#include "report/picture_legend.h"
#include "report/picture_style.h"
#include "report/text_width.h"

namespace proofstone {

namespace {

using Bar = MixPicture::Bar;
using Piece = MixPicture::Piece;
using Stuff = MixPicture::Stuff;

constexpr double mix_bar_height = 26;
constexpr double bar_gap = 14;

bool can_be_drawn(const Piece& piece) { return std::isfinite(piece.volume) && piece.volume > 0; }

double length_of(const Bar& bar) {
  double sum = 0;
  for (const auto& piece : bar.pieces) sum += can_be_drawn(piece) ? piece.volume : 0;
  return sum;
}

Paint paint_of(Stuff stuff) {
  switch (stuff) {
    case Stuff::rock:
      return {Ink::stone_2, 1, Ink::ink, 1, {}, "rock"};
    case Stuff::fill:
      return {Ink::stone_1, 1, Ink::ink, 1, {}, "fill"};
    case Stuff::open_voids:
      return {Ink::paper, 1, Ink::muted, 1, "4 3", "open-voids"};
  }
  return {};
}

/// "Class II 1, Native loam 0.54"
std::string words_of(const Bar& bar) {
  std::string words;
  for (const auto& piece : bar.pieces) {
    if (!can_be_drawn(piece)) continue;
    words += fmt::format("{}{} {}", words.empty() ? "" : ", ", piece.label,
                         significant(piece.volume, 2));
  }
  return words;
}

/// Draws a bar with its words and returns where it ends.
double draw_bar(SvgCanvas& canvas, const Bar& bar, double pixels_each, double top) {
  const double room = canvas.width() - 2 * side_room;
  double y = top;
  for (const auto& line : wrapped(bar.label, room / bold_width, font_size)) {
    canvas.text({side_room, y + 13}, line,
                {font_size, TextAnchor::start, Ink::ink, true, false, {}});
    y += line_height;
  }
  double x = side_room;
  for (const auto& piece : bar.pieces) {
    if (!can_be_drawn(piece)) continue;
    const double width = piece.volume * pixels_each;
    canvas.rectangle({x, y + 2}, std::max(1.0, width), mix_bar_height, paint_of(piece.stuff));
    x += width;
  }
  y += mix_bar_height + 6;
  for (const auto& line : wrapped(words_of(bar), room, font_size)) {
    canvas.text({side_room, y + 13}, line,
                {font_size, TextAnchor::start, Ink::muted, false, false, {}});
    y += line_height;
  }
  return y + bar_gap;
}

double draw_names(SvgCanvas& canvas, double top) {
  std::vector<LegendEntry> entries;
  const auto add = [&entries](Stuff stuff, const char* name) {
    entries.push_back({[stuff](SvgCanvas& on, PixelPoint centre) {
                         on.rectangle({centre.x - 14, centre.y - 6}, 28, 12, paint_of(stuff));
                       },
                       name});
  };
  add(Stuff::rock, "rock");
  add(Stuff::fill, "fill");
  add(Stuff::open_voids, "open voids");
  return draw_legend(canvas, entries, side_room, canvas.width() - side_room, top);
}

}  // namespace

std::string draw(const MixPicture& picture, UnitSystem, double width) {
  SvgCanvas canvas(fmt::format("{}-{}", picture.id, svg_number(width)), width);
  double longest = 0;
  for (const auto& bar : picture.bars) longest = std::max(longest, length_of(bar));
  double y = 4;
  if (longest > 0) {
    for (const auto& bar : picture.bars) {
      y = draw_bar(canvas, bar, (width - 2 * side_room) / longest, y);
    }
  } else {
    canvas.text({side_room, y + 13}, "There is nothing to draw.",
                {font_size, TextAnchor::start, Ink::muted, false, false, {}});
    y += line_height + bar_gap;
  }
  y = draw_names(canvas, y);
  return canvas.finish(y, "mix-picture", picture.title, picture.description);
}

}  // namespace proofstone
