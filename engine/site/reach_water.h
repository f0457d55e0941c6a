#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/hydraulics/profile.h"
#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// One flow case through one reach.
struct ReachWater {
  const SiteReach* reach = nullptr;
  const FlowCase* flow_case = nullptr;
  std::optional<WaterProfile> profile;  ///< absent when it could not be computed
  Finding finding;

  /// The water at a surveyed section, by its id; nullptr when the profile does not have it.
  const ProfileSection* at(const std::string& section) const;
  /// A jump between this section and a neighbouring one; nullptr when there is none.
  const ProfileJump* jump_beside(const std::string& section) const;
};

/// Every flow case for which a reach states its boundaries, reach by reach, smallest discharge
/// first.
std::vector<ReachWater> water_in_reaches(const Site& site, const Wording& wording);

/// The water of a flow case in the reach a section belongs to; nullptr when it belongs to none, or
/// the reach states no boundary for the flow case.
const ReachWater* reach_water_of(const std::vector<ReachWater>& all, const std::string& section,
                                 const FlowCase& flow_case);

}  // namespace proofstone
