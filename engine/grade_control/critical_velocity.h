#pragma once

#include "engine/chute/chute_flow.h"

namespace proofstone {

/// Velocity at critical depth over a crest, q/yc, with both put down as steps.
Velocity critical_velocity(UnitDischarge q, Steps& steps);

}  // namespace proofstone
