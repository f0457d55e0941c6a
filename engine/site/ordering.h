#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/quantity/measure.h"

namespace proofstone {

/// What a zone states of its extent, which stands before what is measured.
struct ZoneExtent {
  std::optional<Length> length;        ///< along the stream or the structure
  std::optional<Length> slope_length;  ///< across it, along the ground
  std::optional<Area> area;            ///< of the slope, where it is no length times a width
  bool stated() const { return length || slope_length || area; }
};

/// A truck by its name and what it carries.
struct Truck {
  std::string name;
  Mass load;
};

/// How rock is ordered at a site.
struct Ordering {
  Dimensionless voids = Dimensionless::number(0.38);  ///< of placed rock (trade: 0.35 to 0.40)
  std::optional<Density> bulk_density;                ///< of placed rock, where it was weighed
  std::optional<Density> bedding_density;             ///< in place; absent: by volume alone
  std::optional<Length> fabric_roll_width;            ///< absent: 15 ft
  Dimensionless spare = Dimensionless::number(0);     ///< ordered beyond, as a share
  std::vector<Truck> trucks;
  bool stated = false;
};

/// A price for each `per`: 62 for each "1 ton".
struct UnitPrice {
  double amount = 0;
  Measure per;
  std::string text;  ///< `per` as the document writes it
};

/// What the document says things cost. Money is a number with the text of its currency.
struct Prices {
  std::string currency;
  std::string from;  ///< who says so, and when
  std::map<std::string, UnitPrice> items;
  std::map<std::string, UnitPrice> classes;  ///< rock, by class; before the item "rock"
};

/// What may have a price, and what it may be counted by.
struct PricedItem {
  std::string id;
  std::vector<QuantityKind> kinds;
};
const std::vector<PricedItem>& priced_items();

}  // namespace proofstone
