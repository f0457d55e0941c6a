#pragma once

#include "engine/site/site.h"

namespace proofstone {

/// A mix of the document, ready to be computed for a zone: its fills with their materials of the
/// document (none behind the fills of a published recipe).
struct PreparedMix {
  const SiteMix* site_mix = nullptr;
  const RockClass* rock_class = nullptr;
  const PublishedRecipe* recipe = nullptr;
  FilledMix mix;                           ///< without parts where it is to be designed
  std::vector<const Material*> materials;  ///< one a fill; nullptr where the catalog states it
};

/// The mix of a zone. Problems name what is missing: the voids of the rock, a band too open to draw
/// a curve through, no material to fill with. Precondition: the zone names a mix of the site.
Expected<PreparedMix> prepare_mix(const Site& site, const Zone& zone);

/// The same mix with the materials to design with: those the mix names as on offer, else those of
/// its parts, else all of the document whose porosity and shrinking are stated.
PreparedMix for_design(const Site& site, const PreparedMix& prepared);

/// The mix with proportions in whole buckets found for the materials to design with. Problems:
/// those of design_mix.
Expected<PreparedMix> designed_mix(const Site& site, const PreparedMix& prepared);

}  // namespace proofstone
