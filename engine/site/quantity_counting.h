#pragma once

#include "engine/site/lined_part.h"
#include "engine/site/quantity_table.h"
#include "engine/toe/placed_rock.h"

namespace proofstone {

/// Everything the rows of one zone are written from. Internal to the quantities.
struct Counting {
  const Site& site;
  const Zone& zone;
  const std::vector<ZoneWater>& water;
  const RockClass& rock_class;
  LinedPart part;
  PlacedRock placed;
  ZoneQuantities counted;
  Volume excavation = Volume();  ///< of what has been counted so far
};

inline void add_row(Counting& counting, QuantityRow row) {
  counting.counted.rows.push_back(std::move(row));
}

/// What fills the voids of the layer, where the zone names a mix.
void count_fill(Counting& counting);

/// Bedding and geotextile of the zone's filter.
void count_filter(Counting& counting);

/// Topsoil, blanket and stakes of the zone's cover.
void count_cover(Counting& counting);

}  // namespace proofstone
