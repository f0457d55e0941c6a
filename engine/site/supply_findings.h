#pragma once

#include <optional>
#include <vector>

#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// What the loads of a lot say: mass delivered against the plan, tickets, and whether the supply
/// drifts. Nothing where the lot has neither loads nor a plan.
std::vector<Finding> supply_findings(const Site& site, const Lot& lot, const Wording& wording);

/// The run chart of a lot's loads; nothing where fewer than two carry a size.
std::optional<RunChartPicture> run_chart(const Site& site, const Lot& lot, const Wording& wording);

}  // namespace proofstone
