#pragma once

#include <string>
#include <vector>

#include "engine/site/substituted_site.h"

namespace proofstone {

/// The designs side by side; the first is the original.
using ComparedColumns = std::vector<const SizedSite*>;

/// Whether a finding judges something of a zone that other rock may change: stones, layer, toe, and
/// what the rock is made of, lies on and is covered with.
bool hangs_on_the_rock(const Finding& finding);

/// Every row of the comparison: the rock, what is judged, what is ordered.
void compare_designs(Substitution& study, const ComparedColumns& columns, const Wording& wording);

/// "9 of the rock to 4 of Loam", by the parts or the recipe of a mix; "to be found" where it has
/// neither.
std::string proportions_text(const Site& site, const std::string& mix);

/// What of `other` stops more than it does in `original`, by the findings of `other`.
std::vector<const Finding*> made_worse(const SizedSite& original, const SizedSite& other);

}  // namespace proofstone
