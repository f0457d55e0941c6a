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

/// Adds a material of the document to the fills.
void add_fill(PreparedMix& prepared, const Material& material, double parts);

}  // namespace proofstone
