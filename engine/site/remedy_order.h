#pragma once

#include <optional>
#include <vector>

#include "engine/site/findings.h"
#include "engine/site/site.h"

namespace proofstone {

/// What there is of a lot: as stated, else what its loads weigh together, else what is planned.
std::optional<Mass> mass_of_lot(const Site& site, const Lot& lot);

/// What a remedy costs as a whole, in the document's money.
void put_remedy_cost(Finding& finding, double cost);

/// One list: what is shown to serve first, then what needs more stones, then what the designer must
/// decide, last what does not serve; among equals by cost where every one has a cost, else in the
/// order in which they disturb the work least, as they come. Each finding is told its place and
/// why.
void rank_remedies(std::vector<Finding>& remedies);

}  // namespace proofstone
