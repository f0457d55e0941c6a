#pragma once

#include "engine/method/method.h"

namespace proofstone {

/// Share of the shear force that the walls of a smooth straight channel carry (Knight, Demetriou &
/// Hamed 1984 for rectangles; Flintham & Carling 1988 for trapezoids, which agrees with it at a
/// rectangle), and the mean shear on walls and bed that follows.
const Method& wall_shear_share_method();

}  // namespace proofstone
