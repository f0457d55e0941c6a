#pragma once

#include "engine/site/findings.h"
#include "engine/site/prepared_mix.h"
#include "engine/site/wording.h"

namespace proofstone {

/// Whether a mix keeps its own fine grains and, over the soil that the zone states, keeps the soil:
/// the filled layer is its own filter only where it does both. Nothing where the curve of the whole
/// mix is not known.
std::optional<Finding> mix_stability(const Site& site, const Zone& zone,
                                     const PreparedMix& prepared, const MixBalance& balance,
                                     const Wording& wording);

}  // namespace proofstone
