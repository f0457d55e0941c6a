#pragma once

#include "engine/site/class_choice.h"
#include "engine/site/zone_sizing.h"

namespace proofstone {

/// Whether the class that is specified for a zone holds under the zone's policy, and which class of
/// its family is the smallest that does.
Finding class_finding(const ZoneSizing& sizing, const ClassChoice& choice, const Wording& wording);

}  // namespace proofstone
