#pragma once

#include "engine/rock/rock_class.h"

namespace proofstone {

/// The classes of the same family next smaller and next larger by nominal D50; nullptr at the ends.
struct ClassNeighbours {
  const RockClass* below = nullptr;
  const RockClass* above = nullptr;
};
ClassNeighbours class_neighbours(const RockClass& rock_class);

}  // namespace proofstone
