#pragma once

#include <string>

#include "engine/quantity/measure.h"
#include "engine/site/pictures.h"

namespace proofstone {

/// The count on its way between the two lines of the plan and, below, how often the plan accepts
/// rock of each share and how many stones it takes on average. The plan's operation is computed
/// here, when the picture is asked for.
std::string draw(const SequentialCountPicture& picture, UnitSystem units, double width);

}  // namespace proofstone
