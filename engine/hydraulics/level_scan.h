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

/// A level that was looked at, and whether what is sought had risen there.
struct LevelSeen {
  double level = 0;
  bool risen = false;
};

/// Every level at which `rises` turns from false to true while the level goes up from the lowest
/// ground through levels, rising, that were looked at.
template <class Rises>
std::vector<double> turning_levels(double lowest, const std::vector<LevelSeen>& seen,
                                   Rises&& rises) {
  std::vector<double> found;
  LevelSeen below{lowest, false};
  for (const LevelSeen& here : seen) {
    if (here.risen && !below.risen) found.push_back(turning_point(below.level, here.level, rises));
    below = here;
  }
  return found;
}

/// The same, looked at from the ground to the lower end of the section.
template <class Rises>
std::vector<double> turning_levels(const Section& section, Rises&& rises) {
  std::vector<LevelSeen> seen;
  for (const double level : scan_levels(section, section.lower_end().meters())) {
    seen.push_back({level, rises(level)});
  }
  return turning_levels(section.lowest().meters(), seen, rises);
}

}  // namespace proofstone
