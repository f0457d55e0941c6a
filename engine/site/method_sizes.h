#pragma once

#include "engine/site/zone_sizing.h"

namespace proofstone {

/// The sizes that all methods ask for in a zone, beside the band of its class.
MethodSizesPicture method_sizes_picture(const ZoneSizing& sizing);

}  // namespace proofstone
