#pragma once

#include <string>

#include "engine/site/pictures.h"

namespace proofstone {

/// Draws a channel in plan, `width` pixels wide (240 to 4000), north up and to true scale: the band
/// of the water, its bends and the zones along its banks, with a scale bar and an arrow that points
/// downstream. What is not finite is left out.
std::string draw(const PlanPicture& picture, UnitSystem units, double width);

}  // namespace proofstone
