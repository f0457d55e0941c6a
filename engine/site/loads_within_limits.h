#pragma once

#include <optional>

#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// What share of a lot has a median size inside that of its class, estimated from the loads that
/// carry a size. Nothing with fewer than three of them or where the class does not limit it.
std::optional<Finding> loads_within_limits(const Site& site, const Lot& lot,
                                           const Wording& wording);

}  // namespace proofstone
