#pragma once

#include <string>
#include <vector>

#include "engine/site/compared_row.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// What is required of the rock of a source beside what each of its submittals shows.
struct SubmittalComparison {
  std::vector<std::string> columns;  ///< what is required, then the submittals in their order
  std::vector<ComparedRow> rows;     ///< one a limit in force, then gradation and density
  std::vector<Finding> findings;     ///< one a submittal, which brings it all together
};

/// Problems: no such source, or none of its submittals is in the document.
Expected<SubmittalComparison> compare_submittals(const Site& site, const std::string& source,
                                                 const Wording& wording);

}  // namespace proofstone
