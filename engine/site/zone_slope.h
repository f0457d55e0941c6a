#pragma once

#include <optional>
#include <vector>

#include "engine/site/zone_water.h"

namespace proofstone {

/// The slope of a bank zone from its toe to its top, along the ground.
struct ZoneSlope {
  Length toe_station;
  Length toe_elevation;
  Length top_station;
  Length top_elevation;
  Length length;  ///< along the ground
  Angle angle;    ///< from horizontal, of the straight line from toe to top
};

/// The slope of a bank zone; nothing where the section does not give one.
std::optional<ZoneSlope> slope_of_zone(const Zone& zone, const SiteSection& section);

/// The length of the slope along the ground between two elevations on it; what lies beyond its ends
/// does not count.
Length slope_length_between(const Zone& zone, const SiteSection& section, const ZoneSlope& slope,
                            Length low, Length high);

/// How high the water of a flow case stands at the zone, computed or stated.
std::optional<Length> water_level_of(const ZoneWater& water);

/// The elevation of a level that a designer names; `end` where it names none. Nothing where the
/// water of its flow case is not known at the zone.
std::optional<Length> elevation_of(const NamedLevel& level, const std::vector<ZoneWater>& waters,
                                   Length end);

/// The highest water of one purpose at the zone.
std::optional<Length> highest_level(const std::vector<ZoneWater>& waters, FlowPurpose purpose);

}  // namespace proofstone
