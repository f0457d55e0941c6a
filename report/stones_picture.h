#pragma once

#include <string>

#include "engine/site/pictures.h"

namespace proofstone {

/// Draws rows of stones to one scale, each stone as tall as its size, beside a rule of one foot or
/// 300 mm; `width` pixels wide (240 to 4000). A row that is too long goes on in a second line.
/// Sizes that are not positive and finite are left out.
std::string draw(const StonesPicture& picture, UnitSystem units, double width);

}  // namespace proofstone
