#pragma once

#include <string>
#include <vector>

#include "engine/mix/mix_design.h"
#include "engine/site/prepared_mix.h"
#include "engine/site/wording.h"

namespace proofstone {

/// Proportions in whole buckets that were found for the mix of a zone.
struct DesignedMix {
  PreparedMix mix;
  MixDesign design;
  std::vector<std::string> left_out;  ///< in words: materials that were not designed with, and why
};

/// The mix of a zone with proportions for the materials to design with: those it names as on offer,
/// else those of its parts, else all of the document. They fill the voids, leave the stones
/// touching, keep the soil of the zone and their own fine grains, as far as that can be had at
/// once. Materials that cannot be computed are left out alone. Problems: those of design_mix.
Expected<DesignedMix> designed_mix(const Site& site, const Zone& zone, const PreparedMix& prepared);

/// What the proportions keep, and what cannot be kept with these materials and why.
std::string what_is_kept(const Site& site, const Zone& zone, const DesignedMix& made,
                         const Wording& wording);

/// What to do about what is not kept; empty where all is.
std::string advice_on_kept(const Zone& zone, const MixDesign& design);

}  // namespace proofstone
