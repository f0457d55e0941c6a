#include "report/outcome_mark.h"

#include <fmt/format.h>

namespace proofstone {

namespace {

/// In a square of 24.
constexpr double square = 24;
constexpr std::string_view stone = "M6.2 3.6 15.6 2.2 21.8 8.8 20.4 17.6 11.4 21.8 2.6 16 2.2 9Z";
constexpr std::string_view part_of_stone = "M2.4 13.2 21.1 13.2 20.4 17.6 11.4 21.8 2.6 16Z";
constexpr std::string_view hatching = "M5.6 13.6 12.4 6M7.4 17.8 17.4 6.6M12.4 18.6 18.6 11.6";

/// The paths of a mark, within the square.
void draw_paths(SvgCanvas& canvas, Outcome outcome) {
  const Ink ink = outcome_ink(outcome);
  Paint outline{Ink::paper, 1, ink, 2, {}, {}};
  if (outcome == Outcome::not_yet_known) outline.dash = "2.6 2.4";
  if (outcome == Outcome::meets) outline.fill = ink;
  canvas.path(std::string(stone), outline);
  if (outcome == Outcome::falls_short) {
    canvas.path(std::string(part_of_stone), {ink, 1, Ink::none, 0, {}, {}});
  }
  if (outcome == Outcome::ask_the_designer) {
    canvas.path(std::string(hatching), {Ink::none, 1, ink, 2, {}, {}});
  }
}

}  // namespace

Ink outcome_ink(Outcome outcome) {
  switch (outcome) {
    case Outcome::meets:
      return Ink::river;
    case Outcome::falls_short:
      return Ink::ochre;
    case Outcome::not_yet_known:
      return Ink::muted;
    case Outcome::ask_the_designer:
      return Ink::ink;
  }
  return Ink::muted;
}

void draw_outcome_mark(SvgCanvas& canvas, Outcome outcome, PixelPoint centre, double size) {
  canvas.begin_placed_group("outcome-mark", {centre.x - size / 2, centre.y - size / 2},
                            size / square);
  draw_paths(canvas, outcome);
  canvas.end_group();
}

std::string outcome_mark_svg(Outcome outcome, double size) {
  SvgCanvas canvas("", square);
  draw_paths(canvas, outcome);
  return fmt::format(
      "<svg class=\"outcome-mark\" viewBox=\"0 0 24 24\" width=\"{0}\" height=\"{0}\" "
      "aria-hidden=\"true\" focusable=\"false\">{1}</svg>",
      svg_number(size), canvas.content());
}

}  // namespace proofstone
