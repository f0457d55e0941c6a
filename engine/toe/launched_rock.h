#pragma once

#include "engine/finding/steps.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Where the rock of a toe is placed.
enum class ToePlacement { dry, under_water };

/// Rock that must lie ready to follow the bed down, for each unit of length: USACE EM 1110-2-1601
/// (1994) Table 3-2 [memory]: A = (1 + f)·T·h·√(1 + z²), with the launched slope 1V:zH (the manual:
/// 1V:2H) and the increase f of 25 % dry and 50 % under water for heights up to 15 ft, and 50 % and
/// 75 % above.
struct LaunchedRock {
  Dimensionless increase;  ///< f
  Area in_place;           ///< without the increase
  Area cross_section;      ///< with it
};
LaunchedRock launched_rock(Length layer_thickness, Length launch_height, Slope launch_slope,
                           ToePlacement placement, Steps& steps);

/// Where the table is printed, for steps and descriptions.
const char* launched_rock_source();

}  // namespace proofstone
