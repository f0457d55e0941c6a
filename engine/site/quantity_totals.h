#pragma once

#include <string>

#include "engine/site/ordering.h"
#include "engine/site/quantity_table.h"

namespace proofstone {

/// Begins the item of a row that counts truckloads; the name of the truck follows.
inline const std::string loads_item = "loads.";

/// The item of a row that counts loads of one fill.
inline const std::string fill_loads_item = "fill-loads";

/// Adds the rows of the zones up. Truckloads are those of what is ordered together: part loads of
/// two zones ride on one truck.
void add_up(QuantityTable& table, const Ordering& ordering);

/// Puts the prices on zones and totals.
void put_prices(QuantityTable& table, const Prices& prices);

}  // namespace proofstone
