#pragma once

#include <string>

#include "engine/site/pictures.h"

namespace proofstone {

/// Draws the water surface along a reach, `width` pixels wide (240 to 4000): bed, lower bank, the
/// water of each flow case, the critical level of the largest, and hydraulic jumps. Heights are
/// stretched, and the picture says by how much.
///
/// Points that are not finite are left out.
std::string draw(const ProfilePicture& picture, UnitSystem units, double width);

}  // namespace proofstone
