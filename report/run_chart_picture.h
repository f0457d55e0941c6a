#pragma once

#include <string>

#include "engine/site/pictures.h"

namespace proofstone {

/// Draws the loads of a lot in the order of time, `width` pixels wide (240 to 4000): a point for
/// each load, the moving average as a line within its limits, alarms as rings. Sizes that are not
/// positive and finite are left out.
std::string draw(const RunChartPicture& picture, UnitSystem units, double width);

}  // namespace proofstone
