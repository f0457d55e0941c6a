#pragma once

#include <optional>

#include "engine/site/site.h"

namespace proofstone {

/// What does not depend on any water.
ZoneSetting setting_of(const Site& site, const Zone& zone, const FlowCase& flow_case);

/// Puts the water of the main channel into a setting.
void take_channel(ZoneSetting& setting, Slope energy_slope, const FlowPart& channel);

/// Puts the ground of the zone under a flow into a setting: slope and depths. Gives the bank of a
/// bank zone. Problems: those of bank_geometry.
Problems take_ground(ZoneSetting& setting, const Zone& zone, const Section& survey,
                     const SectionFlow& flow, std::optional<BankGeometry>& bank);

}  // namespace proofstone
