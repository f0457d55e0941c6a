#pragma once

#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// What is said of the mix of a zone.
struct ZoneMix {
  std::vector<Finding> findings;
  std::optional<MixPicture> picture;
};

/// For a zone that names a mix: how full the voids are, whether the rock is forced apart, what a
/// unit of the layer takes of everything, whether the mix is its own filter, and proportions in
/// whole buckets that would fit. Nothing
/// for other zones.
ZoneMix mix_in_zone(const Site& site, const Zone& zone, const Wording& wording);

}  // namespace proofstone
