#include "report/run_chart_picture.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "report/axis_ticks.h"
#include "report/picture_legend.h"
#include "report/picture_style.h"
#include "report/svg_canvas.h"

namespace proofstone {
namespace {

using Point = RunChartPicture::Point;

constexpr double left_side = 44;
constexpr double right_side = 12;
constexpr double top = 30;
constexpr double plot_height = 200;
constexpr double load_radius = 6;
constexpr double alarm_radius = 10;

/// Loads across, sizes upward.
struct Frame {
  const Unit& unit;
  double width = 0;
  std::size_t loads = 0;
  double low = 0;
  double high = 1;

  double bottom() const { return top + plot_height; }
  double x(std::size_t load) const {
    const double share = (static_cast<double>(load) + 0.5) / static_cast<double>(loads);
    return left_side + share * (width - left_side - right_side);
  }
  double y(Length size) const {
    return bottom() - (size.in(unit)-low) / (high - low) * plot_height;
  }
};

Frame frame_of(const std::vector<const Point*>& points, const RunChartPicture& picture,
               UnitSystem units, double width) {
  Frame frame{stone_size_unit(units), width, points.size()};
  std::vector<double> sizes;
  const auto add = [&](const std::optional<Length>& size) {
    if (size && is_size(*size)) sizes.push_back(size->in(frame.unit));
  };
  for (const auto* point : points) {
    for (const auto& size : {std::optional<Length>(point->size), point->low, point->high}) {
      add(size);
    }
  }
  add(picture.target);
  if (sizes.empty()) return frame;
  const auto [low, high] = std::minmax_element(sizes.begin(), sizes.end());
  const double margin = std::max(0.1 * (*high - *low), 0.02 * *high);
  frame.low = *low - margin;
  frame.high = *high + margin;
  return frame;
}

void draw_axes(SvgCanvas& canvas, const Frame& frame) {
  for (const auto& tick : even_ticks(frame.low, frame.high, most_ticks)) {
    const double y = frame.y(Length::of(tick.value, frame.unit));
    canvas.line({left_side, y}, {canvas.width() - right_side, y},
                {Ink::none, 1, Ink::line, 1, {}, "grid"});
    canvas.text({left_side - 6, y + 4}, tick.label,
                {font_size, TextAnchor::end, Ink::muted, false, false, {}});
  }
  canvas.text({8, 16}, fmt::format("Median size, {}", frame.unit.symbol),
              {font_size, TextAnchor::start, Ink::muted, false, false, {}});
  const std::size_t step = std::max<std::size_t>(1, frame.loads / most_ticks);
  for (std::size_t load = 0; load < frame.loads; load += step) {
    canvas.text({frame.x(load), frame.bottom() + 18}, fmt::format("{}", load + 1),
                {font_size, TextAnchor::middle, Ink::muted, false, false, {}});
  }
  canvas.text({canvas.width() - right_side, frame.bottom() + 36}, "Load, in the order of time",
              {font_size, TextAnchor::end, Ink::muted, false, false, {}});
}

const Paint limits_paint{Ink::river, 0.14, Ink::none, 1, {}, "limits"};
const Paint average_paint{Ink::none, 1, Ink::river, 2, {}, "average"};
const Paint target_paint{Ink::none, 1, Ink::muted, 1.25, "5 3", "target"};
const Paint alarm_paint{Ink::none, 1, Ink::ochre, 2.5, {}, "alarm"};
const Paint load_paint{Ink::stone_3, 1, Ink::paper, 1, {}, "load"};

void draw_chart(SvgCanvas& canvas, const Frame& frame, const std::vector<const Point*>& points) {
  std::vector<PixelPoint> limits;
  std::vector<PixelPoint> average;
  for (std::size_t i = 0; i < points.size(); ++i) {
    if (points[i]->high) limits.push_back({frame.x(i), frame.y(*points[i]->high)});
    if (points[i]->average) average.push_back({frame.x(i), frame.y(*points[i]->average)});
  }
  for (std::size_t i = points.size(); i-- > 0;) {
    if (points[i]->low) limits.push_back({frame.x(i), frame.y(*points[i]->low)});
  }
  if (limits.size() > 2) canvas.polygon(limits, limits_paint);
  if (average.size() > 1) canvas.polyline(average, average_paint);
  for (std::size_t i = 0; i < points.size(); ++i) {
    const PixelPoint at{frame.x(i), frame.y(points[i]->size)};
    canvas.circle(at, load_radius, load_paint);
    if (points[i]->alarm) canvas.circle(at, alarm_radius, alarm_paint);
  }
}

std::vector<LegendEntry> names(bool has_limits, bool has_alarm) {
  std::vector<LegendEntry> entries{
      {[](SvgCanvas& on, PixelPoint centre) { on.circle(centre, load_radius, load_paint); },
       "a load"}};
  if (has_limits) {
    entries.push_back({[](SvgCanvas& on, PixelPoint centre) {
                         on.rectangle({centre.x - 14, centre.y - 7}, 28, 14, limits_paint);
                         on.line({centre.x - 14, centre.y}, {centre.x + 14, centre.y},
                                 average_paint);
                       },
                       "moving average and where it stays without a drift"});
    entries.push_back({[](SvgCanvas& on, PixelPoint centre) {
                         on.line({centre.x - 14, centre.y}, {centre.x + 14, centre.y},
                                 target_paint);
                       },
                       "size to keep"});
  }
  if (has_alarm) {
    entries.push_back(
        {[](SvgCanvas& on, PixelPoint centre) { on.circle(centre, alarm_radius, alarm_paint); },
         "alarm: the supply has drifted"});
  }
  return entries;
}

}  // namespace

std::string draw(const RunChartPicture& picture, UnitSystem units, double width) {
  SvgCanvas canvas(fmt::format("{}-{}", picture.id, svg_number(width)), width);
  std::vector<const Point*> points;
  for (const auto& point : picture.points) {
    if (is_size(point.size)) points.push_back(&point);
  }
  const auto frame = frame_of(points, picture, units, width);
  draw_axes(canvas, frame);
  if (picture.target && is_size(*picture.target)) {
    const double y = frame.y(*picture.target);
    canvas.line({left_side, y}, {width - right_side, y}, target_paint);
  }
  draw_chart(canvas, frame, points);
  const bool has_alarm =
      std::any_of(points.begin(), points.end(), [](const Point* point) { return point->alarm; });
  const double end = draw_legend(canvas, names(picture.target.has_value(), has_alarm), left_side,
                                 width - right_side, frame.bottom() + 48);
  return canvas.finish(end, "run-chart-picture", picture.title, picture.description);
}

}  // namespace proofstone
