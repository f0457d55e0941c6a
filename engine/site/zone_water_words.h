#pragma once

#include "engine/site/zone_water.h"

namespace proofstone {

/// The finding on the water of a zone in one flow case, with nothing found yet.
Finding begin_water_finding(const Zone& zone, const FlowCase& flow_case);

/// Says why the water could not be computed.
void report_water_problems(Finding& finding, const Problems& problems);

/// What a reviewer should look at in the ground before trusting the level.
void caution_about_ground(Finding& finding, const ZoneWater& water, const Wording& wording);

/// The sentence, the outcome and what to do, of water that was computed.
void word_water(Finding& finding, const ZoneWater& water, const Zone& zone, const Wording& wording);

/// The figures of water that was computed.
void state_water(Finding& finding, const ZoneWater& water);

}  // namespace proofstone
