#pragma once

#include <string>

#include "engine/quantity/unit.h"
#include "engine/site/pictures.h"

namespace proofstone {

/// Draws soil, filter and rock as curves and bands over grain sizes from clay to boulders, with the
/// control points between which a filter must lie, as SVG `width` pixels wide.
std::string draw(const FilterPicture& picture, UnitSystem units, double width);

}  // namespace proofstone
