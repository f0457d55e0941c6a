#include "report/ground_axes.h"

#include <fmt/format.h>

#include <algorithm>

#include "report/axis_ticks.h"
#include "report/picture_style.h"
#include "report/text_width.h"

namespace proofstone {

void draw_ground_axes(SvgCanvas& canvas, const SectionView& view, UnitSystem units,
                      std::string_view along) {
  const Unit& unit = ground_unit(units);
  const PixelBox box = view.box();
  const Paint mark{Ink::none, 1, Ink::muted, 1, {}, "axis"};
  canvas.text({0, 15}, fmt::format("Elevation, {}", unit.symbol), quiet_text);
  canvas.line({box.left, box.top}, {box.left, box.bottom}, mark);
  for (const auto& tick :
       even_ticks(view.window.bottom / unit.si_factor, view.window.top / unit.si_factor,
                  std::max(2, static_cast<int>(view.height() / 36)))) {
    const double y = view.at({0, tick.value * unit.si_factor}).y;
    canvas.line({box.left - 4, y}, {box.left, y}, mark);
    if (y > box.bottom - 4) continue;
    canvas.text({box.left - 7, y + 4.5}, tick.label,
                {font_size, TextAnchor::end, Ink::muted, false, false, {}});
  }
  canvas.line({box.left, box.bottom}, {box.right, box.bottom}, mark);
  double free_from = 0;
  for (const auto& tick :
       even_ticks(view.window.left / unit.si_factor, view.window.right / unit.si_factor,
                  std::max(2, static_cast<int>(view.width() / 70)))) {
    const double x = view.at({tick.value * unit.si_factor, 0}).x;
    const double half = text_width(tick.label, font_size) / 2;
    canvas.line({x, box.bottom}, {x, box.bottom + 4}, mark);
    if (x - half < free_from || x + half > canvas.width()) continue;
    canvas.text({x, box.bottom + 18}, tick.label,
                {font_size, TextAnchor::middle, Ink::muted, false, false, {}});
    free_from = x + half + 8;
  }
  canvas.text({canvas.width() - 10, box.bottom + 36}, fmt::format("{}, {}", along, unit.symbol),
              {font_size, TextAnchor::end, Ink::muted, false, false, {}});
}

}  // namespace proofstone
