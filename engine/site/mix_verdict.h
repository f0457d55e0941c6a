#pragma once

#include "engine/site/findings.h"
#include "engine/site/prepared_mix.h"

namespace proofstone {

/// What to do about rock and fills that the packing model does not reach, with what is allowed.
/// Nothing where other problems stand among them.
std::string advice_beyond_packing(const Problems& problems);

/// Puts outcome, sentence, next and margin of a mix by its own parts into the finding. `on_ratio`
/// names the parts: "13 buckets of Class II to 7 of Native loam".
void judge_mix(const PreparedMix& prepared, const MixBalance& balance, const std::string& on_ratio,
               Finding& finding);

}  // namespace proofstone
