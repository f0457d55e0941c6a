#pragma once

#include <string>

#include "engine/finding/outcome.h"
#include "report/svg_canvas.h"

namespace proofstone {

/// The mark of an outcome is one stone: full for meets, filled to below its top for falls short,
/// only dashed for not yet known, hatched as on a drawing for ask the designer. It always stands
/// beside the outcome's phrase or a label.

/// Draws the mark, `size` pixels across, round a point.
void draw_outcome_mark(SvgCanvas& canvas, Outcome outcome, PixelPoint centre, double size);

/// The mark alone, as a small SVG for a line of text; hidden from screen readers, which read the
/// phrase beside it.
std::string outcome_mark_svg(Outcome outcome, double size);

/// The ink an outcome is written in.
Ink outcome_ink(Outcome outcome);

}  // namespace proofstone
