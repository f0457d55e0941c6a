#pragma once

#include "report/svg_canvas.h"

namespace proofstone {

/// A dimension between two places: a line between two arrows; where it is too short for them they
/// point at it from outside.
void draw_dimension(SvgCanvas& canvas, PixelPoint from, PixelPoint to);

}  // namespace proofstone
