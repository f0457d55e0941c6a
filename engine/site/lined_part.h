#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/zone_water.h"

namespace proofstone {

/// How long and how wide the rock of a zone lies, from what the document states or else from its
/// section and its course in plan.
struct LinedPart {
  std::optional<Length> length;        ///< along the stream
  std::optional<Length> slope_length;  ///< across it, along the ground
  std::optional<Area> area;
  std::vector<std::string> missing;  ///< sentences; empty where the area is known
  std::vector<std::string> notes;
  Steps steps;
};

LinedPart lined_part(const Site& site, const Zone& zone, const std::vector<ZoneWater>& water);

}  // namespace proofstone
