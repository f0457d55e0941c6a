#pragma once

#include <array>

#include "simulation/known_pile.h"

namespace proofstone {

/// How often intervals stated at 90 % held the truth of a known pile, in looks at it.
struct Coverage {
  static constexpr std::array<double, 3> percents{15, 50, 85};
  std::array<double, 3> percent_smaller{};  ///< of the sizes D15, D50 and D85
  std::array<double, 3> size{};             ///< D15, D50 and D85 themselves
  double all_sizes = 0;                     ///< three intervals stated together
};

Coverage coverage(const KnownPile& pile, const Observer& observer, int looks, unsigned seed);

}  // namespace proofstone
