#pragma once

#include "engine/site/zone_sizing.h"

namespace proofstone {

/// Which methods speak about a zone within their published range, which stand outside it, which do
/// not apply or lack an input, and why.
Finding applicability_finding(const ZoneSizing& sizing, const Wording& wording);

}  // namespace proofstone
