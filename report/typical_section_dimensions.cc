#include "report/typical_section_dimensions.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/axis_ticks.h"
#include "report/dimension_line.h"
#include "report/picture_style.h"
#include "report/text_width.h"

namespace proofstone {

namespace {

const TextStyle halo_text{font_size, TextAnchor::middle, Ink::ink, true, true, "label"};

}  // namespace

void draw_thickness(SvgCanvas& canvas, const TypicalSectionDrawing& drawing,
                    const SectionView& view, LabelPlacement& placement) {
  const auto from = view.at(drawing.thickness_from);
  const auto to = view.at(drawing.thickness_to);
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
                                      {{words.x - 14, words.y - 4}, TextAnchor::end},
                                      {{words.x, words.y + 5}, TextAnchor::start}});
  if (!place) return;
  TextStyle style = halo_text;
  style.anchor = place->anchor;
  canvas.text(place->baseline, drawing.thickness_text, style);
}

void draw_slope(SvgCanvas& canvas, const TypicalSectionDrawing& drawing, const SectionView& view,
                LabelPlacement& placement) {
  const double rise = std::clamp(60 * drawing.rise_per_run, 8.0, 30.0);
  const double run = rise / std::max(drawing.rise_per_run, 1e-3);
  if (drawing.slope_text.empty() || !(run < view.width() / 2)) return;
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
  const double room = 0.35 * view.width() / view.pixels_across / unit.si_factor;
  auto ticks = even_ticks(0, room, 2);
  for (int wanted = 3; wanted < 6 && ticks.size() < 2; ++wanted) {
    ticks = even_ticks(0, room, wanted);
  }
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

}  // namespace proofstone
