#pragma once

#include <optional>

#include "engine/site/lot_evidence.h"

namespace proofstone {

/// What the sequential plan says of the counts of a lot, and how many stones one would plan for.
struct CountedSoFar {
  std::vector<Finding> findings;
  /// The limit that is nearest to being undecided.
  std::optional<SequentialCountPicture> picture;
};

/// One finding for each stone count on a grid: accepted, turned away or to go on, limit by limit.
/// A lot without any look gets the number of stones to plan for instead.
CountedSoFar counted_so_far(const Site& site, const LotEvidence& evidence, const Wording& wording);

}  // namespace proofstone
