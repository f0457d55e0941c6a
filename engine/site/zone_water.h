#pragma once

#include <vector>

#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// The water at one zone in one flow case.
struct ZoneWater {
  const FlowCase* flow_case = nullptr;
  std::optional<SectionFlow> flow;   ///< absent when the water could not be computed
  std::optional<BankGeometry> bank;  ///< of a bank zone that stands in this water
  std::optional<ZoneSetting> setting;
  Finding finding;
};

/// Runs every flow case of the site through the zone's section as uniform flow and takes the local
/// water at the zone: smallest discharge first.
std::vector<ZoneWater> water_at_zone(const Site& site, const Zone& zone, const Wording& wording);

}  // namespace proofstone
