#include "engine/site/slope_parts.h"

#include <algorithm>

#include "engine/site/zone_slope.h"

namespace proofstone {
namespace {

/// Parts of a slope thinner than this are not spoken of.
constexpr Length least_height = Length::millimeters(1);

}  // namespace

std::vector<SlopeBand> slope_bands(Length toe, Length top, const std::vector<ZoneWater>& waters) {
  std::vector<SlopeBand> bands;
  Length from = toe;
  const auto up_to = [&](Length level, WaterPresence water) {
    const Length end = std::min(level, top);
    if (!(end - from > least_height)) return;
    bands.push_back({from, end, water});
    from = end;
  };
  const auto frequent = highest_level(waters, FlowPurpose::frequent);
  const auto design = highest_level(waters, FlowPurpose::design);
  if (const auto base = highest_level(waters, FlowPurpose::base)) {
    up_to(*base, WaterPresence::always);
  }
  if (frequent) up_to(*frequent, WaterPresence::often);
  if (design) up_to(*design, frequent ? WaterPresence::rarely : WaterPresence::unknown);
  up_to(top, design ? WaterPresence::never : WaterPresence::unknown);
  return bands;
}

std::vector<StatedKind> stated_kinds(const Zone& zone, Length toe, Length top,
                                     const std::vector<ZoneWater>& waters) {
  std::vector<StatedKind> kinds;
  Length from = toe;
  for (const KindUpSlope& one : zone.kinds) {
    StatedKind kind{&one, from, elevation_of(one.up_to, waters, top)};
    if (kind.top) kind.top = std::clamp(*kind.top, toe, std::max(toe, top));
    kinds.push_back(kind);
    if (!kind.top) break;
    from = std::max(from, *kind.top);
  }
  return kinds;
}

std::vector<KindPiece> pieces_of(const SlopeBand& band, const std::vector<StatedKind>& kinds) {
  std::vector<KindPiece> pieces;
  Length from = band.bottom;
  for (const StatedKind& kind : kinds) {
    if (!kind.top) break;
    const Length low = std::max(from, kind.bottom);
    const Length high = std::min(band.top, *kind.top);
    if (!(high - low > least_height)) continue;
    pieces.push_back({{low, high, band.water}, kind.stated});
    from = high;
  }
  if (band.top - from > least_height) pieces.push_back({{from, band.top, band.water}, nullptr});
  return pieces;
}

}  // namespace proofstone
