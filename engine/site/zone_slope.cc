#include "engine/site/zone_slope.h"

#include <algorithm>

namespace proofstone {

std::optional<ZoneSlope> slope_of_zone(const Zone& zone, const SiteSection& section) {
  const Length bank_top = zone.bank == BankSide::left ? section.left_bank : section.right_bank;
  const Length top = zone.top_station.value_or(bank_top);
  const Length top_elevation = section.survey.ground_at(top);
  const auto bank =
      bank_geometry(section.survey, zone.bank, zone.toe_station, std::nullopt, top_elevation);
  if (!bank || !(bank->wet_slope_length.meters() > 0)) return std::nullopt;
  return ZoneSlope{bank->toe_station, bank->toe_elevation,    top,
                   top_elevation,     bank->wet_slope_length, bank->angle};
}

Length slope_length_between(const Zone& zone, const SiteSection& section, const ZoneSlope& slope,
                            Length low, Length high) {
  const auto up_to = [&](Length level) {
    if (!(level > slope.toe_elevation)) return Length::meters(0);
    if (!(level < slope.top_elevation)) return slope.length;
    const auto bank =
        bank_geometry(section.survey, zone.bank, zone.toe_station, std::nullopt, level);
    return bank ? bank->wet_slope_length : Length::meters(0);
  };
  return std::max(Length::meters(0), up_to(high) - up_to(low));
}

std::optional<Length> water_level_of(const ZoneWater& water) {
  if (water.setting && water.setting->stated.water_level) return water.setting->stated.water_level;
  if (water.flow) return water.flow->water_level;
  return std::nullopt;
}

std::optional<Length> elevation_of(const NamedLevel& level, const std::vector<ZoneWater>& waters,
                                   Length end) {
  if (level.elevation) return level.elevation;
  if (level.flow_case.empty()) return end;
  for (const ZoneWater& water : waters) {
    if (water.flow_case->id == level.flow_case) return water_level_of(water);
  }
  return std::nullopt;
}

std::optional<Length> highest_level(const std::vector<ZoneWater>& waters, FlowPurpose purpose) {
  std::optional<Length> highest;
  for (const ZoneWater& water : waters) {
    if (water.flow_case->purpose != purpose) continue;
    const auto level = water_level_of(water);
    if (level && (!highest || *level > *highest)) highest = level;
  }
  return highest;
}

}  // namespace proofstone
