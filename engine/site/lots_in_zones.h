#pragma once

#include <vector>

#include "engine/site/findings.h"
#include "engine/site/rock_in_zone.h"

namespace proofstone {

/// What one lot came to in one zone.
struct LotInZone {
  const Lot* lot = nullptr;
  const Zone* zone = nullptr;
  Outcome outcome = Outcome::not_yet_known;
};

/// Which lot should go to which zone so that every zone has rock that is shown to hold, at the
/// least cost. A lot serves only the zones that it names. Nothing where there is no choice: fewer
/// than two lots, or no zone that two of them name.
std::optional<Finding> lots_in_zones(const Site& site, const std::vector<LotInZone>& judged,
                                     const QuantityTable& quantities, const Wording& wording);

}  // namespace proofstone
