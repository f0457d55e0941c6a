#include "engine/site/lined_ground.h"

#include <algorithm>

namespace proofstone {
namespace {

/// The ground between two stations, with its own points in between.
std::vector<GroundPoint> ground_between(const Section& section, Length from, Length to) {
  std::vector<GroundPoint> line;
  line.push_back({from, section.ground_at(from)});
  for (const auto& point : section.points()) {
    if (point.station > from && point.station < to)
      line.push_back({point.station, point.elevation});
  }
  line.push_back({to, section.ground_at(to)});
  return line;
}

}  // namespace

std::vector<GroundPoint> lined_ground(const SiteSection& section, const Zone& zone,
                                      const std::vector<ZoneWater>& water) {
  if (zone.place != ZonePlace::bank) {
    return ground_between(section.survey, section.left_bank, section.right_bank);
  }
  const BankGeometry* bank = nullptr;
  for (const auto& at : water) {
    if (at.bank) bank = &*at.bank;
  }
  if (bank == nullptr) return {};
  // The rock goes on above the water to the top of the zone, where the zone has one.
  const Length top = zone.top_station.value_or(bank->top_station);
  const Length left = std::min(bank->toe_station, top);
  const Length right = std::max(bank->toe_station, top);
  return ground_between(section.survey, left, right);
}

}  // namespace proofstone
