#pragma once

#include <vector>

#include "engine/evidence/size_margin.h"
#include "engine/site/lot_evidence.h"
#include "engine/site/zone_sizing.h"

namespace proofstone {

/// What one method says of the measured rock in a zone.
struct MeasuredMargin {
  const SizeAsked* asked = nullptr;  ///< as sized with the specified source
  RequiredSize required;             ///< as sized again with the lot's own rock
  SizeMargin margin;
};

/// A lot taken back through the design of one zone.
struct RockInZone {
  const Zone* zone = nullptr;
  std::vector<MeasuredMargin> margins;
  /// The one that leaves least margin under the zone's policy.
  std::optional<std::size_t> governing;
  Outcome outcome = Outcome::not_yet_known;
  std::vector<Finding> findings;
};

/// Sizes the zone again with the density and shape of the lot's rock and asks of every method
/// whether the measured curve reaches the size, with what margin and how surely. `sizing` and
/// `evidence` must outlive the result.
RockInZone rock_in_zone(const Site& site, const ZoneSizing& sizing, const LotEvidence& evidence,
                        const Wording& wording);

}  // namespace proofstone
