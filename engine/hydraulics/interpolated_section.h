#pragma once

#include "engine/hydraulics/reach.h"

namespace proofstone {

/// The section at `share` of the way from `upstream` (0) to `downstream` (1). Ends, banks and the
/// lowest ground are joined by straight lines, and so is the ground between them at equal shares of
/// its width; a wall stays a wall. Losses are those of `upstream`; ineffective parts are joined
/// when both sections have as many, else they are those of the nearer section.
Expected<ReachSection> interpolated_section(const ReachSection& upstream,
                                            const ReachSection& downstream, double share);

}  // namespace proofstone
