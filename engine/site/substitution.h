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
};

/// Problems: no such zone, source or class; nothing that differs; rock that nobody believes.
Expected<Substitution> study_substitution(const Site& site, const SubstituteRock& substitute,
                                          const Wording& wording);

}  // namespace proofstone
