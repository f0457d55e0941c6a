#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/reach_water.h"
#include "engine/site/substitution.h"
#include "engine/site/zone_sizing.h"

namespace proofstone {

/// A site with its zone sized; kept in one place because the sizing points into the water.
struct SizedSite {
  SizedSite(Site of, const std::string& id, const Wording& wording);
  SizedSite(const SizedSite&) = delete;
  SizedSite& operator=(const SizedSite&) = delete;

  Site site;
  const Zone& zone;
  std::vector<ReachWater> reaches;
  std::vector<ZoneWater> water;
  ZoneSizing sizing;
  Findings findings;
};

/// What stands in the way of a study; empty where nothing does.
Problems substitution_problems(const Site& site, const SubstituteRock& rock);

/// The site with this zone alone, without what other rock leaves as it is: lots, looks, loads,
/// papers, walks, nonconformances and chances.
Site site_of_zone_alone(const Site& site, const std::string& zone);

/// The zone with the other rock. What had to be left out or is taken on trust goes into `notes`.
Site with_other_rock(const Site& original, const SubstituteRock& rock,
                     std::vector<std::string>& notes);

/// What a class leaves under the zone's policy; absent where nothing counts.
std::optional<double> margin_of(const RockClass& rock_class, const ZoneSizing& sizing);

/// Whether a margin is no less than another, but for rounding.
bool leaves_no_less(double margin, double other);

/// The substitute with the class and the layer that leave what the original leaves.
std::optional<Site> made_as_safe(const SizedSite& original, const SizedSite& offered);

/// A site whose filter and mix serve again where other rock made them worse than with the original;
/// what was changed, in words. Nothing where nothing could be mended.
struct MendedSite {
  Site site;
  std::vector<std::string> changes;  ///< "the filter: Coarse bedding, 9 in"
  bool filter = false;               ///< whether the filter is among them
};
std::optional<MendedSite> mended(const SizedSite& original, const SizedSite& other,
                                 const Wording& wording);

}  // namespace proofstone
