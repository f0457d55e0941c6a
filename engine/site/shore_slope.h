#pragma once

#include <optional>
#include <vector>

#include "engine/site/zone_sizing.h"

namespace proofstone {

/// The slope of a shore zone and the elevations between which its rock lies. Where the document
/// states no water level, heights are over the still water.
struct ShoreSlope {
  Angle angle;
  const ZoneWater* attack = nullptr;  ///< the design case with the highest waves
  Length still;
  Length foot;
  Length top;
  bool level_stated = false;
  bool foot_stated = false;  ///< else one wave height below the still water
  bool top_stated = false;   ///< else one wave height above it
};

/// By the slope that the governing method is given, else that any method is given. Nothing where no
/// slope is given, or neither waves nor limits are.
std::optional<ShoreSlope> slope_of_shore(const Zone& zone, const std::vector<ZoneWater>& waters,
                                         const ZoneSizing* sizing);

}  // namespace proofstone
