#pragma once

#include <string>

#include "engine/site/pictures.h"

namespace proofstone {

/// Draws what each method asks for on one axis of stone sizes, one line a method, `width` pixels
/// wide (240 to 4000): a bar for what the class has at the same percent, the outcome mark at the
/// size asked for. Names stand above their lines, so that a phone shows them whole. Sizes that are
/// not positive and finite are left out.
std::string draw(const MethodSizesPicture& picture, UnitSystem units, double width);

}  // namespace proofstone
