#pragma once

#include "engine/placing/placing_design.h"
#include "engine/site/site.h"

namespace proofstone {

/// What the design of a zone says of its lining, as placing looks at it. Precondition: the
/// references of the zone are good.
PlacingDesign placing_design(const Site& site, const Zone& zone);

}  // namespace proofstone
