#pragma once

#include "engine/hydraulics/centreline.h"

namespace proofstone {

/// A line that runs beside a centreline at a constant distance.
struct BesideCentreline {
  Length from;  ///< along the centreline, downstream
  Length to;
  Length offset_right;  ///< looking downstream; to the left it is negative
  Length width;         ///< over which the curvature is smoothed: that of the channel
};

/// Its length: ∫(1 + κ·e)ds, which is L + e·φ where the course turns by φ to the left. On the
/// outside of a bend it is longer than the centreline.
///
/// Problems: those of curvature_along, and "beyond-the-centreline" where the stretch ends below it.
Expected<Length> length_beside(const Centreline& centreline, const BesideCentreline& line,
                               Steps& steps);

}  // namespace proofstone
