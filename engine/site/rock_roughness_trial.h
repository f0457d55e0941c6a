#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/hydraulics/lined_section.h"
#include "engine/site/zone_sizing.h"

namespace proofstone {

/// A zone whose water is computed anew over rock of other sizes: what stays the same.
struct RockRoughnessCase {
  const Zone* zone = nullptr;
  const SiteSection* section = nullptr;
  const ZoneWater* water = nullptr;  ///< over the roughness of the survey
  const SizingMethod* method = nullptr;
  const RockClass* specified = nullptr;
  SectionStretch stretch;    ///< of the section that the rock covers
  double percent = 50;       ///< which size the method asks for
  double d90_over_size = 1;  ///< of the class, both the smallest allowed
};

/// Water over rock of one roughness, at the slope of the energy line that the zone's water has, and
/// the size that it asks for.
struct RockRoughnessTrial {
  Dimensionless roughness;
  SectionFlow flow;
  ZoneSetting setting;
  HeldJson choices;  ///< of the setting, near a structure
  SizingAnswer answer;
  Length required;  ///< as the class measures stones
};

/// Problems: those of normal_flow and bank_geometry; why the method gives no size.
Expected<RockRoughnessTrial> water_over_rock(const RockRoughnessCase& of, Dimensionless roughness);

/// Sizes that ask, through their own roughness, for themselves.
struct BalancingSizes {
  std::vector<Length> sizes;  ///< smallest first
  Length smallest_looked_at;
  Length largest_looked_at;
  bool largest_holds = false;
  /// Why no larger size could be looked at; empty where the scan went to its end.
  std::string ended_by;
};

/// Every balancing size from 0.02 to 20 ft, by a scan in steps of a tenth, each then halved in on.
/// `coefficient` is the K of K·D90^⅙.
BalancingSizes find_balancing_sizes(const RockRoughnessCase& of, Dimensionless coefficient);

}  // namespace proofstone
