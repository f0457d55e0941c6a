#pragma once

#include "engine/site/zone_water.h"

namespace proofstone {

/// What the zone states of its water in a flow case; nullptr where it states nothing.
const StatedWater* stated_at(const Zone& zone, const FlowCase& flow_case);

/// Puts what the zone states of its water over what was computed.
void take_stated(ZoneSetting& setting, const StatedWater& stated, Finding& finding);

/// The water of a zone without a section: what it states, or not yet known.
ZoneWater stated_zone_water(const Site& site, const Zone& zone, const FlowCase& flow_case,
                            const Wording& wording);

}  // namespace proofstone
