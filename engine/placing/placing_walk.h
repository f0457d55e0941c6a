#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/evidence/observation.h"

namespace proofstone {

/// What was found at one check on a walk: what the eye says, lengths measured, or loads counted.
struct CheckEntry {
  std::string check;           ///< id of a check that the design of the zone asks for
  std::optional<bool> passes;  ///< as seen; absent: measured, or not yet known
  std::vector<Length> measured;
  std::map<std::string, int> loads;  ///< by material of the mix; "rock" for its rock
  std::vector<std::string> photos;
  std::string note;
};

/// One walk along a zone while it is built.
struct PlacingWalk {
  std::string id;
  std::string name;
  std::string zone;
  Observation seen;
  std::vector<CheckEntry> entries;
};

}  // namespace proofstone
