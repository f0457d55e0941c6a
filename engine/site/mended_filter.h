#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// A filter that serves between a zone's soil and its rock.
struct MendedFilter {
  ZoneFilter filter;
  std::vector<Material>
      made;           ///< gradations made for it, in the middle of the bands they must keep
  std::string words;  ///< "Coarse bedding, 9 in; Surge, 12 in", from the soil up
};

/// The first that serves of: the zone's own layers with another bedding over them, standard
/// beddings and materials on offer alone and in pairs, bands made layer on layer. Thick enough by
/// the method filter-thickness. Nothing where the soil is not stated or none serves.
std::optional<MendedFilter> mended_filter(const Site& site, const Zone& zone,
                                          const Wording& wording);

/// The layers of a filter in words, from the soil up; "none" where there are none.
std::string layers_text(const Site& site, const ZoneFilter& filter, const Wording& wording);

}  // namespace proofstone
