#pragma once

#include <vector>

#include "engine/site/lot_evidence.h"

namespace proofstone {

/// Rock held against other rock.
struct ComparedRock {
  std::vector<Finding> findings;
  std::vector<GradationPicture> pictures;  ///< both curves, where they were compared
};

/// A lot against the accepted rock of its class (a lot that the document calls the reference), the
/// sides of its pile against one another, and single loads against that reference or, without one,
/// against the looks at the rest of the lot. Counts of single stones on grids are compared by the
/// largest distance between their curves, all else by χ² between common sizes.
ComparedRock compare_rock(const Site& site, const LotEvidence& evidence,
                          const std::vector<LotEvidence>& lots, const Wording& wording);

}  // namespace proofstone
