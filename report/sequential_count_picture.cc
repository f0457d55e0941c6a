#include "report/sequential_count_picture.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/acceptance/sequential_plan.h"
#include "report/axis_ticks.h"
#include "report/picture_legend.h"
#include "report/picture_style.h"
#include "report/svg_canvas.h"

namespace proofstone {
namespace {

constexpr double count_left_side = 48;
constexpr double count_right_side = 48;
constexpr int shares_along = 25;

/// One plot: values across and upward onto a rectangle of the picture.
struct Plot {
  double top = 0;
  double height = 0;
  double width = 0;  ///< of the picture
  double most_across = 1;
  double most_up = 1;

  double bottom() const { return top + height; }
  double right() const { return width - count_right_side; }
  PixelPoint at(double across, double up) const {
    return {count_left_side + across / most_across * (right() - count_left_side),
            bottom() - up / most_up * height};
  }
};

const Paint grid_paint{Ink::none, 1, Ink::line, 1, {}, "grid"};
const Paint go_on_paint{Ink::stone_1, 1, Ink::none, 1, {}, "go-on"};
const Paint accept_paint{Ink::none, 1, Ink::river, 2, {}, "accept"};
const Paint reject_paint{Ink::none, 1, Ink::ochre, 2, "7 3", "turn-away"};
const Paint path_paint{Ink::none, 1, Ink::ink, 1.75, {}, "count"};
const Paint end_paint{Ink::ink, 1, Ink::paper, 1.5, {}, "count-end"};
const Paint average_stones_paint{Ink::none, 1, Ink::muted, 2, "2 3", "average-stones"};
const Paint share_paint{Ink::none, 1, Ink::muted, 1, "5 3", "share"};

TextStyle label(TextAnchor anchor) { return {font_size, anchor, Ink::muted, false, false, {}}; }

void draw_count_axes(SvgCanvas& canvas, const Plot& plot, const std::string& up,
                     const std::string& across) {
  for (const auto& tick : even_ticks(0, plot.most_up, most_ticks)) {
    const auto at = plot.at(0, tick.value);
    canvas.line(at, {plot.right(), at.y}, grid_paint);
    canvas.text({at.x - 6, at.y + 4}, tick.label, label(TextAnchor::end));
  }
  for (const auto& tick : even_ticks(0, plot.most_across, most_ticks)) {
    const auto at = plot.at(tick.value, 0);
    canvas.text({at.x, at.y + 18}, tick.label, label(TextAnchor::middle));
  }
  canvas.text({8, plot.top - 10}, up, label(TextAnchor::start));
  canvas.text({plot.right(), plot.bottom() + 36}, across, label(TextAnchor::end));
}

void draw_lines(SvgCanvas& canvas, const Plot& plot, const SequentialLines& lines) {
  const double stones = plot.most_across;
  const auto accept_from = plot.at(lines.accept_offset() / lines.slope(), 0);
  const auto accept_to = plot.at(stones, lines.slope() * stones - lines.accept_offset());
  const auto reject_from = plot.at(0, lines.reject_offset());
  const auto reject_to = plot.at(stones, lines.slope() * stones + lines.reject_offset());
  canvas.polygon({plot.at(0, 0), accept_from, accept_to, reject_to, reject_from}, go_on_paint);
  canvas.line(accept_from, accept_to, accept_paint);
  canvas.line(reject_from, reject_to, reject_paint);
}

void draw_path(SvgCanvas& canvas, const Plot& plot, const SequentialCountPicture& picture) {
  std::vector<PixelPoint> path{plot.at(0, 0)};
  const bool stone_by_stone = picture.path.size() > 1;
  for (std::size_t i = 0; i < picture.path.size(); ++i) {
    const double stones = stone_by_stone ? static_cast<double>(i + 1) : picture.stones;
    path.push_back(plot.at(stones, picture.path[i]));
  }
  canvas.polyline(path, path_paint);
  canvas.circle(path.back(), 5, end_paint);
}

void draw_operation(SvgCanvas& canvas, Plot plot, const SequentialPlan& plan,
                    const SequentialCountPicture& picture) {
  std::vector<std::pair<double, SequentialPlan::Operation>> curve;
  double most_stones = 1;
  for (int i = 0; i <= shares_along; ++i) {
    const double percent = plot.most_across * i / shares_along;
    const auto operation = plan.operation(std::min(1.0, percent / 100));
    curve.emplace_back(percent, operation);
    most_stones = std::max(most_stones, operation.average_stones);
  }
  draw_count_axes(canvas, plot, "Accepted, %", "True share on the wrong side, %");
  Plot stones = plot;
  stones.most_up = 1.1 * most_stones;
  for (const auto& tick : even_ticks(0, stones.most_up, most_ticks)) {
    const auto at = stones.at(stones.most_across, tick.value);
    canvas.text({at.x + 6, at.y + 4}, tick.label, label(TextAnchor::start));
  }
  canvas.text({canvas.width() - 4, plot.top - 10}, "Stones on average", label(TextAnchor::end));
  std::vector<PixelPoint> accepted;
  std::vector<PixelPoint> average;
  for (const auto& [percent, operation] : curve) {
    accepted.push_back(plot.at(percent, 100 * operation.accepted));
    average.push_back(stones.at(percent, operation.average_stones));
  }
  for (const double share : {picture.good_share, picture.unacceptable_share}) {
    canvas.line(plot.at(100 * share, 0), plot.at(100 * share, 100), share_paint);
  }
  canvas.polyline(accepted, accept_paint);
  canvas.polyline(average, average_stones_paint);
}

}  // namespace

std::string draw(const SequentialCountPicture& picture, UnitSystem, double width) {
  SvgCanvas canvas(fmt::format("{}-{}", picture.id, svg_number(width)), width);
  ShareRisks risks;
  risks.acceptable = Dimensionless::number(picture.good_share);
  risks.unacceptable = Dimensionless::number(picture.unacceptable_share);
  risks.producers_risk = Dimensionless::number(picture.producers_risk);
  risks.owners_risk = Dimensionless::number(picture.owners_risk);
  const auto lines = SequentialLines::make(risks);
  double bottom = 20;
  if (lines && !picture.path.empty()) {
    Plot plot{34, 200, width};
    plot.most_across = std::max(1.15 * picture.stones, 1.5 * lines->first_acceptance());
    plot.most_up = std::max<double>(picture.path.back() + 2,
                                    lines->slope() * plot.most_across + lines->reject_offset());
    draw_count_axes(canvas, plot, fmt::format("Of these: {}", picture.wrong), "Stones counted");
    draw_lines(canvas, plot, *lines);
    draw_path(canvas, plot, picture);
    bottom = plot.bottom() + 48;
  }
  if (const auto plan = SequentialPlan::make(risks)) {
    Plot plot{bottom + 30, 150, width};
    plot.most_across = std::min(100.0, 130 * picture.unacceptable_share);
    plot.most_up = 100;
    draw_operation(canvas, plot, *plan, picture);
    bottom = plot.bottom() + 48;
  }
  const std::vector<LegendEntry> entries{
      line_entry(path_paint, "the count so far"),
      {[](SvgCanvas& on, PixelPoint centre) {
         on.rectangle({centre.x - 14, centre.y - 7}, 28, 14, go_on_paint);
       },
       "go on counting"},
      line_entry(accept_paint, "accept on or below; chance that the plan accepts"),
      line_entry(reject_paint, "turn away on or above"),
      line_entry(average_stones_paint, "stones on average until the plan ends"),
      line_entry(share_paint, "good rock, and rock at the limit")};
  const double end =
      draw_legend(canvas, entries, count_left_side, width - count_right_side, bottom);
  return canvas.finish(end, "sequential-count-picture", picture.title, picture.description);
}

}  // namespace proofstone
