#pragma once

#include <string>
#include <vector>

#include "engine/site/zone_water.h"

namespace proofstone {

/// The allowances for scour at a zone's toe in one flow: what its methods said, what it states, and
/// why some methods do not count.
struct GatheredScour {
  ToeDepthInputs toe;
  std::vector<std::string> not_computed;    ///< sentences
  std::vector<std::string> outside_limits;  ///< sentences; shown and never counted
  bool any = false;                         ///< whether anything counts
};

/// Evaluates the methods the zone names and adds what it states. Steps, sources, reasons, cautions
/// and limits go to the finding. Precondition: the zone speaks of scour.
GatheredScour gather_scour(const Zone& zone, const ZoneWater& at, Finding& finding,
                           const Wording& wording);

}  // namespace proofstone
