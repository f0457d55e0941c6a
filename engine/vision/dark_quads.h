#pragma once

#include <array>
#include <vector>

#include "engine/vision/grey_picture.h"
#include "engine/vision/picture_geometry.h"

namespace proofstone {

/// Corners of something with four straight sides, clockwise as the picture shows it.
using Quad = std::array<PhotoPoint, 4>;

/// Dark patches of a picture whose outer rim has four straight sides of 18 pixels or more.
std::vector<Quad> dark_quads(const GreyPicture& picture);

/// The quad with its sides moved to where the picture turns from dark to light most steeply, looked
/// for up to `reach` pixels off; where a side shows no such edge, it stays.
Quad refined(const Quad& quad, const GreyPicture& picture, double reach);

}  // namespace proofstone
