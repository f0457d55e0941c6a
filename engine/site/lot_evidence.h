#pragma once

#include <string>
#include <vector>

#include "engine/evidence/band_comparison.h"
#include "engine/site/findings.h"
#include "engine/site/site.h"
#include "engine/site/wording.h"

namespace proofstone {

/// What is known of one lot from its looks.
struct LotEvidence {
  const Lot* lot = nullptr;
  const RockClass* ordered = nullptr;
  struct Seen {
    const Look* look = nullptr;
    MeasuredGradation measured;
  };
  std::vector<Seen> seen;
  /// All looks together; absent when there is none or they contradict one another.
  std::optional<MeasuredGradation> together;
  std::optional<BandComparison> comparison;
  std::vector<Finding> findings;
};

/// Turns every look at a lot into a curve, asks whether the looks agree, puts them together and
/// compares with the class that was ordered.
LotEvidence weigh_lot(const Site& site, const Lot& lot, const Wording& wording);

}  // namespace proofstone
