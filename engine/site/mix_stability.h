#pragma once

#include "engine/site/filter_pairs.h"
#include "engine/site/findings.h"
#include "engine/site/prepared_mix.h"
#include "engine/site/wording.h"
#include "engine/soil/internal_stability.h"

namespace proofstone {

/// What a mix does with its own fine grains and with the soil below it.
struct MixAsFilter {
  double from_percent = 0;  ///< smaller than the smallest size that is known
  InternalStability stability;
  /// As of `stability`; not yet known where a curve that seems good stops above its fine end, ask
  /// the designer where one that seems bad may be better for small stones that the class does not
  /// limit.
  Outcome stability_outcome = Outcome::not_yet_known;
  std::optional<PairVerdict> on_soil;  ///< absent where the zone states no soil
  Steps steps;
};

/// Judges a whole mix, called `name`, in a zone; nothing where its curve is not known.
std::optional<MixAsFilter> mix_as_filter(const Site& site, const Zone& zone,
                                         const std::string& name, const FilledMix& mix,
                                         const MixBalance& balance, const Wording& wording);

/// Whether a mix keeps its own fine grains and, over the soil that the zone states, keeps the soil:
/// the filled layer is its own filter only where it does both. Nothing where the curve of the whole
/// mix is not known.
std::optional<Finding> mix_stability(const Site& site, const Zone& zone,
                                     const PreparedMix& prepared, const MixBalance& balance,
                                     const Wording& wording);

}  // namespace proofstone
