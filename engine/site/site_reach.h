#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/hydraulics/profile.h"

namespace proofstone {

/// A section's place in a reach.
struct SiteReachSection {
  std::string section;  ///< its id under /sections
  ReachLengths to_next;
  LossCoefficients losses;
  std::vector<IneffectivePart> ineffective;
};

/// What is known of the water at the ends of a reach in one flow case.
struct ReachEnds {
  Boundary downstream;
  std::optional<Boundary> upstream;
  ProfileRegime regime = ProfileRegime::mixed;
};

/// An ordered run of sections, from upstream to downstream.
struct SiteReach {
  std::string id;
  std::string name;
  std::vector<SiteReachSection> sections;
  std::optional<Length> greatest_step;
  FrictionMean friction = FrictionMean::average_conveyance;
  std::map<std::string, ReachEnds> ends;  ///< by flow case
};

}  // namespace proofstone
