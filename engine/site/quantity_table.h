#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/finding/steps.h"

namespace proofstone {

/// One amount of a bill. Rows of the same `item` and `of` add up over the zones.
struct QuantityRow {
  std::string item;                 ///< "rock-ordered"
  std::string of;                   ///< class or product; may be empty
  std::string what;                 ///< "Rock, Class III, ordered"
  std::optional<Measure> amount;    ///< absent: not yet known
  std::string how = {};             ///< how it was computed, in short
  std::vector<Measure> also = {};   ///< the same as another kind: a volume beside a mass
  std::string priced_as = {};       ///< id of the price that applies; empty: none ever does
  std::string price = {};           ///< "62 USD for 1 ton"; empty where it has none
  std::optional<double> cost = {};  ///< in the table's currency
  std::optional<double> price_per_tonne = {};  ///< its own, before that of the item
  std::optional<Mass> load = {};               ///< of a row of loads: what one carries
  bool partial = false;                        ///< of a total: some zone's share is not yet known
};

/// What one zone takes.
struct ZoneQuantities {
  std::string zone;
  std::string name;
  std::vector<QuantityRow> rows;
  Steps steps;
  std::vector<std::string> missing;  ///< sentences: what is not yet known, and what would tell it
  std::vector<std::string> notes;
  std::optional<double> cost;
};

/// What the zones of a site take, by zone and together.
struct QuantityTable {
  std::string currency;     ///< empty: the document states no prices
  std::string prices_from;  ///< who says what things cost
  std::vector<ZoneQuantities> zones;
  std::vector<QuantityRow> totals;
  std::optional<double> cost;
  std::vector<std::string> without_price;  ///< what is ordered and has no price
  bool complete() const {
    for (const auto& zone : zones) {
      if (!zone.missing.empty()) return false;
    }
    return true;
  }
};

}  // namespace proofstone
