#pragma once

#include <optional>
#include <vector>

namespace proofstone {

/// Which lots may serve which zones, at what cost, out of how much. Every mass in one unit, every
/// cost in one money.
struct LotsToZones {
  /// By lot and zone: what the zone costs with this lot; absent where the lot may not serve it.
  std::vector<std::vector<std::optional<double>>> cost;
  std::vector<std::vector<double>> need;         ///< by lot and zone: mass that the zone takes
  std::vector<std::optional<double>> available;  ///< by lot; absent: as much as is asked for
};

/// The zones that can be served, each by one lot, as many as possible and of those ways the one
/// that costs least.
struct ZoneAssignment {
  std::vector<std::optional<std::size_t>> lot_of_zone;  ///< absent: no lot is left for it
  double cost = 0;
  bool proven = false;  ///< nothing serves more zones, or as many for less
  bool all_served() const;
};

/// Branch and bound over whole choices. Costs and needs are not negative and finite.
ZoneAssignment assign_lots(const LotsToZones& question);

}  // namespace proofstone
