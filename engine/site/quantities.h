#pragma once

#include "engine/site/quantity_table.h"
#include "engine/site/zone_water.h"

namespace proofstone {

/// A zone with its water.
struct WateredZone {
  const Zone* zone = nullptr;
  const std::vector<ZoneWater>* water = nullptr;
};

/// What every zone takes and what it costs. Volumes are in place, rock is measured along the slope
/// and square to it; costs are those of the document and none are supposed.
QuantityTable quantity_table(const Site& site, const std::vector<WateredZone>& zones);

/// As above, with the water of every zone computed here.
QuantityTable quantities_of(const Site& site, const Wording& wording);

/// One finding a zone and one for the site. Nothing for zones of which the document says neither
/// how long they are nor how rock is ordered.
std::vector<Finding> quantity_findings(const QuantityTable& table, UnitSystem units);

/// Whether the document asks for quantities of this zone.
bool asks_for_quantities(const Site& site, const Zone& zone);

}  // namespace proofstone
