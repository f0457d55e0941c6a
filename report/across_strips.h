#pragma once

#include "engine/site/pictures.h"
#include "report/section_view.h"

namespace proofstone {

/// Draws velocity and shear across a section as two strips under it, on the stations of `view`,
/// from `top` down, and returns where they end. Nothing is drawn, and `top` returned, where the
/// picture has no values.
double draw_across_strips(SvgCanvas& canvas, const SectionPicture& picture, const SectionView& view,
                          UnitSystem units, double top);

}  // namespace proofstone
