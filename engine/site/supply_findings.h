#pragma once

#include <optional>
#include <vector>

#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// What the loads of a lot say.
struct Supply {
  /// Mass delivered against the plan, tickets, and whether the supply drifts; none where the lot
  /// has neither loads nor a plan.
  std::vector<Finding> findings;
  /// Nothing where fewer than two loads carry a size.
  std::optional<RunChartPicture> run_chart;
};
Supply supply_of(const Site& site, const Lot& lot, const Wording& wording);

}  // namespace proofstone
