#pragma once

#include <string>

#include "engine/site/pictures.h"

namespace proofstone {

/// Draws where the volume of a mix goes, `width` pixels wide (240 to 4000): a bar a state, all to
/// one scale, each piece named with its volume below its bar. Pieces that are not positive and
/// finite are left out.
std::string draw(const MixPicture& picture, UnitSystem units, double width);

}  // namespace proofstone
