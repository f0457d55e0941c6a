#pragma once

#include <vector>

#include "engine/hydraulics/bracketed_root.h"
#include "engine/hydraulics/section.h"

namespace proofstone {

/// Levels, rising, from just above the lowest ground to `ceiling`, at which a function of the level
/// is looked at before roots are refined. Between two neighbouring elevations of the ground such a
/// function is smooth; it may turn quickly just above a berm, so the levels stand closest there.
std::vector<double> scan_levels(const Section& section, double ceiling);

/// About `wanted` levels between the lowest and the highest of `breaks`, closest above each break.
/// Empty when all breaks are one.
std::vector<double> levels_between(std::vector<double> breaks, std::size_t wanted);

/// Every level at which `rises` turns from false to true while the level goes up from the ground.
template <class Rises>
std::vector<double> turning_levels(const Section& section, Rises&& rises) {
  std::vector<double> found;
  double below = section.lowest().meters();
  bool risen_below = false;
  for (const double level : scan_levels(section, section.lower_end().meters())) {
    const bool risen = rises(level);
    if (risen && !risen_below) found.push_back(turning_point(below, level, rises));
    below = level;
    risen_below = risen;
  }
  return found;
}

}  // namespace proofstone
