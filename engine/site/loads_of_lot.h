#pragma once

#include <optional>
#include <vector>

#include "engine/acceptance/load_charts.h"
#include "engine/site/site.h"

namespace proofstone {

/// The loads of a lot in the order of time; loads of one time in the order of their ids.
std::vector<const Load*> loads_of(const Site& site, const Lot& lot);

/// Those of them that carry a size.
std::vector<const Load*> sized(const std::vector<const Load*>& loads);

/// Both charts of a lot's sizes, in standard deviations of a load from the size to keep.
struct DriftCharts {
  CumulativeSums sums;
  MovingAverages averages;
  double interval = 0;  ///< h of the sums
  double limits = 0;    ///< L of the averages
};

/// Charts set to the run length that the plan asks for. Every load has a size; the plan has a
/// target and a spread.
DriftCharts drift_charts(const std::vector<const Load*>& loads, const SupplyPlan& plan);

}  // namespace proofstone
