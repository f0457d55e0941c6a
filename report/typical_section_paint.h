#pragma once

#include <string>

#include "report/section_view.h"
#include "report/typical_section_drawing.h"

namespace proofstone {

/// Draws a stretch of rock with its stones at size and what fills its voids: nothing, strokes of
/// soil or grains of a mix, so that kinds differ by more than their shade.
void draw_rock(SvgCanvas& canvas, const RockStretch& rock, const SectionView& view, double median,
               Angularity angularity, const std::string& seed);

/// Draws what lies under and on the rock; other shapes are left out.
void draw_shape(SvgCanvas& canvas, const SectionShape& shape, const SectionView& view, bool seeded);

}  // namespace proofstone
