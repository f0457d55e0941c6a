#include "report/operating_curves.h"

#include <fmt/format.h>

#include <algorithm>
#include <vector>

#include "engine/acceptance/sequential_plan.h"
#include "engine/acceptance/single_plan.h"
#include "report/plot_axes.h"

namespace proofstone {
namespace {

constexpr int points_of_curve = 61;
constexpr std::string_view rightward = "true share on the wrong side of the limit (%)";
const Paint single_line{Ink::none, 1, Ink::muted, 2, "6 4", {}};
const Paint sequential_line{Ink::none, 1, Ink::river, 2.5, {}, {}};

/// Shares of the picture in percent: from next to nothing to half as much again as what must not be
/// accepted.
std::vector<double> shares_drawn(double most) {
  std::vector<double> shares;
  for (int i = 0; i < points_of_curve; ++i)
    shares.push_back(std::max(0.01, most * i / (points_of_curve - 1)));
  return shares;
}

double most_share(const ShareRisks& risks) {
  return 100 * std::min(1.0, 1.5 * risks.unacceptable.number());
}

void draw_line(SvgCanvas& canvas, const PlotAxes& axes, const std::vector<PlotPlace>& places,
               const Paint& paint) {
  std::vector<PixelPoint> line;
  line.reserve(places.size());
  for (const auto& place : places) line.push_back(axes.at(place));
  canvas.polyline(line, paint);
}

/// What the two lines are, above the plot at its right.
void draw_legend(SvgCanvas& canvas) {
  const TextStyle style{12, TextAnchor::end, Ink::ink, false, false, {}};
  const double right = canvas.width() - 16;
  canvas.text({right, 18}, "stone by stone", style);
  canvas.line({right - 122, 14}, {right - 96, 14}, sequential_line);
  canvas.text({right - 140, 18}, "single plan", style);
  canvas.line({right - 238, 14}, {right - 212, 14}, single_line);
}

SvgCanvas begin_plot(const std::string& id, const PlotAxes& axes, std::string_view upward) {
  SvgCanvas canvas(id, axes.width);
  canvas.rectangle({0, 0}, axes.width, PlotAxes::height, {Ink::paper, 1, Ink::none, 1, {}, {}});
  draw_plot_axes(canvas, axes, upward, rightward);
  draw_legend(canvas);
  return canvas;
}

std::string of_risks(const ShareRisks& risks) {
  return fmt::format("good up to {:.0f} %, not to be accepted from {:.0f} %",
                     100 * risks.acceptable.number(), 100 * risks.unacceptable.number());
}

}  // namespace

std::string operating_characteristic_picture(const ShareRisks& risks, double width) {
  const auto single = single_plan(risks);
  const auto sequential = SequentialPlan::make(risks);
  if (!single || !sequential) return {};
  std::vector<PlotPlace> by_single;
  std::vector<PlotPlace> by_sequential;
  for (const double share : shares_drawn(most_share(risks))) {
    by_single.push_back({share, 100 * chance_of_acceptance(*single, share / 100)});
    by_sequential.push_back({share, 100 * sequential->operation(share / 100).accepted});
  }
  const PlotAxes axes{0, most_share(risks), 0, 102, width};
  auto canvas = begin_plot("operating-characteristic", axes, "chance of acceptance (%)");
  draw_line(canvas, axes, by_single, single_line);
  draw_line(canvas, axes, by_sequential, sequential_line);
  const Paint mark{Ink::ochre, 1, Ink::paper, 1.5, {}, {}};
  const double good = 100 * (1 - risks.producers_risk.number());
  canvas.circle(axes.at({100 * risks.acceptable.number(), good}), 5, mark);
  const double bad = 100 * risks.owners_risk.number();
  canvas.circle(axes.at({100 * risks.unacceptable.number(), bad}), 5, mark);
  return canvas.finish(
      PlotAxes::height, "plot", "Operating characteristic",
      fmt::format("Chance that rock is accepted, {}. Both plans pass above {:.0f} % at the first "
                  "share and below {:.0f} % at the second; these are marked.",
                  of_risks(risks), good, bad));
}

std::string average_stones_picture(const ShareRisks& risks, double width) {
  const auto sequential = SequentialPlan::make(risks);
  if (!sequential) return {};
  const double fixed = sequential->single_plan_stones();
  std::vector<PlotPlace> places;
  double most = fixed;
  for (const double share : shares_drawn(most_share(risks))) {
    places.push_back({share, sequential->operation(share / 100).average_stones});
    most = std::max(most, places.back().y);
  }
  const PlotAxes axes{0, most_share(risks), 0, 1.05 * most, width};
  auto canvas = begin_plot("average-stones", axes, "stones counted on average");
  draw_line(canvas, axes, {{0, fixed}, {axes.x_high, fixed}}, single_line);
  draw_line(canvas, axes, places, sequential_line);
  return canvas.finish(
      PlotAxes::height, "plot", "Average number of stones",
      fmt::format("Stones counted until the decision, {}: {:.0f} by the single plan; stone by "
                  "stone fewer, most where the rock lies between the two shares.",
                  of_risks(risks), fixed));
}

}  // namespace proofstone
