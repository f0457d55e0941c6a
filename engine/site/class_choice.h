#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/zone_sizing.h"

namespace proofstone {

/// Smallest Dp the class allows over the Dp a method asks for, both as the class measures stones
/// and in rock of the zone's density; absent where the class does not say.
std::optional<double> class_margin(const RockClass& rock_class, const SizeAsked& asked);

/// The smallest class of a family that holds, and why the next smaller one does not.
struct ClassChoice {
  const RockClass* smallest = nullptr;
  std::string why_next_smaller_fails;  ///< empty where there is no smaller one
  double margin = 0;                   ///< of the smallest, under the zone's policy
};

/// A family by name with its classes from small to large.
struct ClassFamily {
  std::string name;
  std::vector<const RockClass*> classes;
};

/// Every family of the catalog and of the document, in the order of the catalog, the document's own
/// first.
std::vector<ClassFamily> class_families(const Site& site);

/// Chooses from a family for a zone under its policy.
ClassChoice choose_class(const ClassFamily& family, const ZoneSizing& sizing,
                         const Wording& wording);

/// The smallest holding class of every family beside one another, and why the next smaller fails.
Finding families_finding(const Site& site, const ZoneSizing& sizing, const Wording& wording);

}  // namespace proofstone
