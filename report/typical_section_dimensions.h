#pragma once

#include "report/label_placement.h"
#include "report/section_view.h"
#include "report/svg_canvas.h"
#include "report/typical_section_drawing.h"

namespace proofstone {

/// The thickness of the layer, with its words in the soil below.
void draw_thickness(SvgCanvas& canvas, const TypicalSectionDrawing& drawing,
                    const SectionView& view, LabelPlacement& placement);

/// The triangle that tells the slope, in the soil below the layer; none for what lies level.
void draw_slope(SvgCanvas& canvas, const TypicalSectionDrawing& drawing, const SectionView& view,
                LabelPlacement& placement);

/// The bar of the scale from `top` down; returns where it ends.
double draw_scale_bar(SvgCanvas& canvas, const SectionView& view, UnitSystem units, double top);

}  // namespace proofstone
