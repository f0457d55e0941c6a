#include "report/plot_axes.h"

#include "report/axis_ticks.h"

namespace proofstone {
namespace {

constexpr double left_room = 64;
constexpr double right_room = 16;
constexpr double top_room = 34;
constexpr double bottom_room = 50;

}  // namespace

PixelPoint PlotAxes::at(PlotPlace place) const {
  const double right = width - right_room;
  const double bottom = height - bottom_room;
  return {left_room + (place.x - x_low) / (x_high - x_low) * (right - left_room),
          bottom - (place.y - y_low) / (y_high - y_low) * (bottom - top_room)};
}

void draw_plot_axes(SvgCanvas& canvas, const PlotAxes& axes, std::string_view upward,
                    std::string_view rightward) {
  const TextStyle quiet{12, TextAnchor::middle, Ink::muted, false, false, {}};
  TextStyle right_aligned = quiet;
  right_aligned.anchor = TextAnchor::end;
  TextStyle left_aligned = quiet;
  left_aligned.anchor = TextAnchor::start;
  const Paint grid{Ink::none, 1, Ink::line, 1, {}, {}};
  for (const auto& tick : even_ticks(axes.x_low, axes.x_high, 8)) {
    const auto foot = axes.at({tick.value, axes.y_low});
    canvas.line(foot, axes.at({tick.value, axes.y_high}), grid);
    canvas.text({foot.x, foot.y + 16}, tick.label, quiet);
  }
  for (const auto& tick : even_ticks(axes.y_low, axes.y_high, 6)) {
    const auto left = axes.at({axes.x_low, tick.value});
    canvas.line(left, axes.at({axes.x_high, tick.value}), grid);
    canvas.text({left.x - 6, left.y + 4}, tick.label, right_aligned);
  }
  canvas.text({8, 18}, upward, left_aligned);
  canvas.text({axes.width - right_room, PlotAxes::height - 12}, rightward, right_aligned);
}

}  // namespace proofstone
