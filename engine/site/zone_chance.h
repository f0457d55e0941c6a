#pragma once

#include <vector>

#include "engine/site/zone_sizing.h"

namespace proofstone {

/// The chance that the specified class moves in each design flow case, by every sizing method for
/// which the designer states an uncertainty: by the design point, by first-order second-moment and
/// by a small simulation, with the quantities ranked by what they bring. Empty where nothing is
/// stated.
std::vector<Finding> chance_findings(const Zone& zone, const ZoneSizing& sizing,
                                     const std::vector<ZoneWater>& water, const Wording& wording);

/// A chance as people read it: "17 %", "0.4 %", "less than 0.0001 %".
std::string chance_text(double chance);

}  // namespace proofstone
