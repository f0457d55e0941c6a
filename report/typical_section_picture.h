#pragma once

#include <string>

#include "engine/site/typical_section.h"

namespace proofstone {

/// Draws a typical section, `width` pixels wide (240 to 4000), to true scale: ground and water
/// levels, the rock at size by what fills its voids, filter, toe, key and cover, with dimensions.
/// On a wide picture what is drawn is named in a column beside it, on a narrow one by numbers.
///
/// What is not finite is left out.
std::string draw(const TypicalSectionPicture& picture, UnitSystem units, double width);

}  // namespace proofstone
