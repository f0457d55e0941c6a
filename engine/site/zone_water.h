#pragma once

#include <vector>

#include "engine/site/findings.h"
#include "engine/site/reach_water.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// The water at one zone in one flow case.
struct ZoneWater {
  const FlowCase* flow_case = nullptr;
  /// Absent when the water could not be computed, or is only stated.
  std::optional<SectionFlow> flow;
  std::optional<FlowPart> channel;   ///< the part between the bank tops, where it was computed
  std::optional<BankGeometry> bank;  ///< of a bank zone that stands in this water
  /// At the zone's own place in a straight reach, where it was computed.
  std::optional<Velocity> slice_velocity;
  /// Raised by a structure that the zone names; the setting's choices then hold it for every method
  /// that takes a velocity at the rock, and live here.
  std::optional<Velocity> velocity_at_rock;
  HeldJson choices;
  std::optional<ZoneSetting> setting;
  Finding finding;
};

/// Takes the local water at the zone in every flow case of the site, smallest discharge first: from
/// the profile of the reach to which the zone's section belongs, else as uniform flow. What the
/// zone states of its water stands before what is computed; a zone without a section has only what
/// it states.
std::vector<ZoneWater> water_at_zone(const Site& site, const Zone& zone,
                                     const std::vector<ReachWater>& reaches,
                                     const Wording& wording);

}  // namespace proofstone
