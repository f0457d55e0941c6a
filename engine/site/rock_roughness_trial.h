#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/hydraulics/lined_section.h"
#include "engine/site/zone_sizing.h"

namespace proofstone {

/// A method that counts in a zone, and what the specified class has of the size it asks for.
struct AskingMethod {
  const SizingMethod* method = nullptr;
  Length available;  ///< the smallest the class allows
};

/// A zone whose water is computed anew over rock like the specified class, larger or smaller by a
/// scale: what stays the same.
struct RockRoughnessCase {
  const Zone* zone = nullptr;
  const SiteSection* section = nullptr;
  const ZoneWater* water = nullptr;  ///< over the roughness of the survey
  const RockClass* specified = nullptr;
  std::vector<AskingMethod> methods;
  SectionStretch stretch;  ///< of the section that the rock covers
  Length d90;              ///< of the class; the rock's is this by the scale
};

/// Water over rock of one roughness, at the slope of the energy line that the zone's water has, and
/// what it asks for.
struct RockRoughnessTrial {
  Dimensionless roughness;
  SectionFlow flow;
  ZoneSetting setting;
  HeldJson choices;           ///< of the setting, near a structure
  std::size_t asks_most = 0;  ///< of the methods
  SizingAnswer answer;        ///< of that one
  double scale = 0;           ///< at which rock like the class is just what that one asks for
};

/// Looks for the level from `near` on. Problems: those of uniform_flow_near and bank_geometry; why
/// no method gives a size.
Expected<RockRoughnessTrial> water_over_rock(const RockRoughnessCase& of, Dimensionless roughness,
                                             Length near);

/// Scales that ask, through their own roughness, for themselves.
struct BalancingScales {
  std::vector<double> scales;  ///< smallest first
  double largest_looked_at = 0;
  bool largest_holds = false;
  /// Why no larger rock could be looked at; empty where the scan went to its end.
  std::string ended_by;
};

/// Every balancing scale for D90 from 0.03 to 30 ft, by a scan in steps of a tenth, each then
/// halved in on. `coefficient` is the K of K·D90^⅙.
BalancingScales find_balancing_scales(const RockRoughnessCase& of, Dimensionless coefficient);

}  // namespace proofstone
