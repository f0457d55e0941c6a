#pragma once

#include <string_view>

#include "report/section_view.h"

namespace proofstone {

/// Draws the axes of a view in the unit of the ground: elevation upward, on its left side, and
/// `along` ("Station", "Distance") below it. Needs 46 pixels left of the view, 20 above and 40
/// below.
void draw_ground_axes(SvgCanvas& canvas, const SectionView& view, UnitSystem units,
                      std::string_view along);

}  // namespace proofstone
