#pragma once

#include "report/built_slope.h"
#include "report/typical_section_drawing.h"

namespace proofstone {

/// Adds topsoil, blanket, stakes and trenches to a typical section.
void add_cover(const TypicalSectionPicture& picture, const BuiltSlope& slope,
               TypicalSectionDrawing& drawing);

}  // namespace proofstone
