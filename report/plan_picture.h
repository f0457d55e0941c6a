#pragma once

#include <optional>
#include <string>

#include "engine/site/pictures.h"

namespace proofstone {

/// Where the picture of a plan lies on the ground, north up: metres east of its left edge and north
/// of its top edge, and how much of the ground a pixel covers.
struct PlanFrame {
  double left = 0;
  double top = 0;
  double metres_per_pixel = 1;
};

/// The frame of the picture that `draw` makes at that width; absent where there is nothing to show.
std::optional<PlanFrame> frame_of(const PlanPicture& picture, double width);

/// Draws a channel in plan, `width` pixels wide (240 to 4000), north up and to true scale: the band
/// of the water, its bends and the zones along its banks, with a scale bar and an arrow that points
/// downstream. What is not finite is left out.
std::string draw(const PlanPicture& picture, UnitSystem units, double width);

}  // namespace proofstone
