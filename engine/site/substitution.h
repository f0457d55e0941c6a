#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/compared_row.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// Other rock for a zone; what is absent stays as it is.
struct SubstituteRock {
  std::string zone;
  std::string source;      ///< id; empty: as specified
  std::string rock_class;  ///< id; empty: as specified
  std::optional<Angularity> angularity;
  std::optional<Dimensionless> specific_gravity;
};

/// Other rock beside the original: the same design on a changed copy of the site. What the rock is
/// made of, lies on and is covered with is judged again with it: under the original, under the
/// substitute as offered, and under the substitute with what it takes for the same safety.
struct Substitution {
  std::vector<std::string> columns;
  std::vector<ComparedRow> rows;
  Finding finding;
  /// What the zone is built of with the substitute made as safe. Absent where no class leaves the
  /// original margin, or where the rock is not of a source of the document.
  struct AsSafe {
    Zone zone;                   ///< with its source, class, layer and filter
    bool mended_filter = false;  ///< the filter is another than before
    std::vector<Material> made;  ///< for that filter, each under an id that was free
    std::optional<SiteMix> mix;  ///< where it is another than before
    Zone before;                 ///< the zone as it stands
    std::optional<SiteMix> mix_before;
  };
  std::optional<AsSafe> as_safe = {};
};

/// Problems: no such zone, source or class; nothing that differs; rock that nobody believes.
Expected<Substitution> study_substitution(const Site& site, const SubstituteRock& substitute,
                                          const Wording& wording);

}  // namespace proofstone
