#include "engine/site/loads_of_lot.h"

#include <algorithm>
#include <tuple>

#include "engine/acceptance/run_length.h"

namespace proofstone {
namespace {

/// A shift of one standard deviation of a load is what is looked for (common practice).
constexpr double allowance = 0.5;
constexpr double weight_of_latest = 0.2;

}  // namespace

std::vector<const Load*> loads_of(const Site& site, const Lot& lot) {
  std::vector<const Load*> loads;
  for (const auto& [id, load] : site.loads) {
    if (load.lot == lot.id) loads.push_back(&load);
  }
  std::sort(loads.begin(), loads.end(), [](const Load* a, const Load* b) {
    return std::tie(a->when, a->id) < std::tie(b->when, b->id);
  });
  return loads;
}

std::vector<const Load*> sized(const std::vector<const Load*>& loads) {
  std::vector<const Load*> with_size;
  for (const auto* load : loads) {
    if (load->median_size) with_size.push_back(load);
  }
  return with_size;
}

DriftCharts drift_charts(const std::vector<const Load*>& loads, const SupplyPlan& plan) {
  std::vector<double> standardised;
  for (const auto* load : loads) {
    standardised.push_back((*load->median_size - *plan.target_size) / *plan.load_spread);
  }
  DriftCharts charts;
  const double loads_between = plan.run_length.number();
  charts.interval = interval_for_run_length(allowance, loads_between);
  charts.limits = limits_for_run_length(weight_of_latest, loads_between);
  charts.sums = cumulative_sums(standardised, {0, allowance, charts.interval, 0});
  charts.averages = moving_averages(standardised, {0, 1, weight_of_latest, charts.limits, false});
  return charts;
}

}  // namespace proofstone
