#pragma once

#include <string>

#include "engine/site/pictures.h"

namespace proofstone {

/// Draws a gradation picture as SVG, `width` pixels wide (240 to 4000): log size across, percent
/// smaller by mass upward, the band as an area between its coarse and its fine limit, the measured
/// curve with its confidence, single looks as thin lines, and what each method asks for as a mark
/// that the curve must pass on the coarse side.
///
/// Sizes that are not positive and numbers that are not finite are left out.
std::string draw(const GradationPicture& picture, UnitSystem units, double width);

/// The same of a curve that was worked out and not measured, under its name and without limits.
std::string draw_computed(const GradationPicture& picture, const std::string& curve,
                          UnitSystem units, double width);

}  // namespace proofstone
