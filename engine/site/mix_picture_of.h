#pragma once

#include "engine/site/pictures.h"
#include "engine/site/prepared_mix.h"

namespace proofstone {

/// Where the volume of a zone's mix goes: loose, the rock alone, and in place.
MixPicture mix_picture(const Zone& zone, const PreparedMix& prepared, const MixBalance& balance);

}  // namespace proofstone
