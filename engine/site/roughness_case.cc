#include "engine/site/roughness_case.h"

#include <algorithm>

namespace proofstone {
namespace {

Density density_of(const ZoneSetting& setting) {
  return Density::kilograms_per_cubic_meter(1000 * setting.rock.specific_gravity.number());
}

/// From toe to top on a bank; elsewhere the ground between the bank stations.
SectionStretch stretch_of(const Zone& zone, const SiteSection& section, const ZoneWater& water) {
  if (!water.bank) return {section.left_bank, section.right_bank};
  const bool left = zone.bank == BankSide::left;
  const Length top = zone.top_station.value_or(left ? section.left_bank : section.right_bank);
  return {std::min(top, water.bank->toe_station), std::max(top, water.bank->toe_station)};
}

}  // namespace

std::optional<CoarseStones> coarse_stones(const RockClass& rock_class, const ZoneSetting& setting) {
  for (const double percent : {90.0, 85.0, 80.0, 75.0, 70.0}) {
    const auto least = least_size_of(rock_class, percent, density_of(setting));
    if (!least) continue;
    CoarseStones coarse{percent, *least, *least};
    if (percent < 90) {
      const auto greatest = rock_class.band.largest_size_at(90);
      if (!greatest) return std::nullopt;
      coarse.for_level = *greatest;
    }
    return coarse;
  }
  return std::nullopt;
}

std::vector<AskingMethod> methods_that_count(const ZoneSizing& sizing, const ZoneWater& at) {
  std::vector<AskingMethod> methods;
  for (const SizeAsked& asked : sizing.asked) {
    if (asked.water != &at || !counts(*sizing.zone, asked)) continue;
    const auto available =
        least_size_of(*sizing.specified, asked.required.percent_smaller, density_of(*at.setting));
    if (available) methods.push_back({asked.method, *available});
  }
  return methods;
}

RockRoughnessCase roughness_case(const ZoneSizing& sizing, const SiteSection& section,
                                 const ZoneWater& at, const CoarseStones& coarse) {
  const Zone& zone = *sizing.zone;
  return {&zone,
          &section,
          &at,
          sizing.specified,
          methods_that_count(sizing, at),
          stretch_of(zone, section, at),
          coarse.for_velocity};
}

}  // namespace proofstone
