#pragma once

#include "engine/site/zone_sizing.h"

namespace proofstone {

/// Whether the layer that is specified for a zone is as thick as the rule of its place asks for
/// with the class that is specified. A zone that states contraction scour and long-term lowering at
/// a pier is judged with them.
Finding layer_finding(const ZoneSizing& sizing, const Wording& wording);

}  // namespace proofstone
