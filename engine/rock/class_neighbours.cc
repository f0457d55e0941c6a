#include "engine/rock/class_neighbours.h"

namespace proofstone {

ClassNeighbours class_neighbours(const RockClass& rock_class) {
  ClassNeighbours found;
  for (const auto& other : class_catalog()) {
    if (other.family != rock_class.family) continue;
    if (other.nominal_d50 < rock_class.nominal_d50) {
      if (found.below == nullptr || other.nominal_d50 > found.below->nominal_d50) {
        found.below = &other;
      }
    } else if (other.nominal_d50 > rock_class.nominal_d50) {
      if (found.above == nullptr || other.nominal_d50 < found.above->nominal_d50) {
        found.above = &other;
      }
    }
  }
  return found;
}

}  // namespace proofstone
