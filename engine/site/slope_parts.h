#pragma once

#include <optional>
#include <vector>

#include "engine/site/kind_proposal.h"
#include "engine/site/zone_water.h"

namespace proofstone {

/// A part of a slope with one presence of water.
struct SlopeBand {
  Length bottom;
  Length top;
  WaterPresence water = WaterPresence::unknown;
};

/// A kind as stated, with the elevations between which it lies; `top` is absent where its level is
/// not known.
struct StatedKind {
  const KindUpSlope* stated = nullptr;
  Length bottom;
  std::optional<Length> top;
};

/// The parts of a slope by the water of the site's flow cases, from the toe up; none thinner than a
/// millimetre.
std::vector<SlopeBand> slope_bands(Length toe, Length top, const std::vector<ZoneWater>& waters);

/// The stated kinds between the toe and the top. After one whose level is not known nothing
/// follows.
std::vector<StatedKind> stated_kinds(const Zone& zone, Length toe, Length top,
                                     const std::vector<ZoneWater>& waters);

/// The part of a band that one stated kind covers, or that none does.
struct KindPiece {
  SlopeBand band;
  const KindUpSlope* stated = nullptr;  ///< nullptr: the zone states nothing here
};
std::vector<KindPiece> pieces_of(const SlopeBand& band, const std::vector<StatedKind>& kinds);

}  // namespace proofstone
