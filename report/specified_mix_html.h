#pragma once

#include <string>

#include "engine/site/wording.h"
#include "engine/specification/specified_mix.h"

namespace proofstone {

/// The section of the specification sheet on one filled mix: what a batch takes, the materials, the
/// tests and how often, and what is accepted.
std::string specified_mix_html(const SpecifiedMix& mix, const Wording& wording);

}  // namespace proofstone
