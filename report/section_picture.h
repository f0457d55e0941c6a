#pragma once

#include <string>

#include "engine/site/pictures.h"

namespace proofstone {

/// Draws a section, `width` pixels wide (240 to 4000): the ground, the water levels and the rock
/// layers, to true scale. A section so flat that nothing could be seen is drawn with its heights
/// stretched, and the picture says by how much. Where the stones would be too small to be seen,
/// each rock layer is drawn a second time, enlarged and to true scale, with its stones at size.
///
/// Points that are not finite are left out.
std::string draw(const SectionPicture& picture, UnitSystem units, double width);

}  // namespace proofstone
