#pragma once

#include <string>

#include "engine/site/zone_mix.h"

namespace proofstone {

/// Proportions in whole buckets for the mix of a zone, and what would be said of the zone with
/// them.
struct ProposedMix {
  SiteMix mix;   ///< of the document, with the proportions found
  ZoneMix said;  ///< findings and picture with it
};

/// Problems: no such zone, a zone without a mix, a mix by a published recipe, and those of
/// prepare_mix and designed_mix.
Expected<ProposedMix> propose_mix(const Site& site, const std::string& zone,
                                  const Wording& wording);

}  // namespace proofstone
