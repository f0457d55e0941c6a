#pragma once

#include <algorithm>
#include <optional>
#include <vector>

#include "engine/hydraulics/level_table.h"

namespace proofstone {

/// A run of levels over which the specific energy only falls (rapid flow) or only rises (tranquil
/// flow) as the water rises.
struct EnergyBranch {
  SectionState low;
  SectionState high;
  bool rising = false;
};

/// The specific energy of one discharge in one section, branch by branch from the bed upward.
/// Internal to the hydraulics.
struct EnergyBranches {
  std::vector<EnergyBranch> branches;
  std::vector<SectionState> critical;  ///< levels of least energy, from the lowest up
  std::size_t least = 0;               ///< the one of them with the least energy

  const SectionState& used_critical() const { return critical[least]; }
  /// Whether the flow at a level is tranquil.
  bool is_tranquil(double level) const;
};

/// Velocity head αQ²/(2gA²), m.
double velocity_head(const SectionState& state, double discharge);
/// Level of the energy line, m.
double energy_level(const SectionState& state, double discharge);
/// βQ²/(gA) + Az̄, m³.
double specific_force(const SectionState& state, double discharge);

/// None when the section is too small for the discharge even far above its ends.
std::optional<EnergyBranches> energy_branches(const LevelTable& table, double discharge);

/// The first place at or above `low` and below `high` where `value(state)` passes from below zero
/// to zero or above.
template <class Value>
std::optional<SectionState> first_rise_through_zero(const LevelTable& table,
                                                    const SectionState& low,
                                                    const SectionState& high, Value&& value) {
  SectionState before = low;
  bool was_below = value(low) < 0;
  const auto look_at = [&](const SectionState& next) {
    const bool is_below = value(next) < 0;
    const bool rises = was_below && !is_below;
    if (!rises) {
      before = next;
      was_below = is_below;
    }
    return rises;
  };
  const auto& states = table.states();
  auto next =
      std::upper_bound(states.begin(), states.end(), low.level,
                       [](double level, const SectionState& state) { return level < state.level; });
  for (; next != states.end() && next->level < high.level; ++next) {
    if (look_at(*next)) return crossing_between(table, before, *next, value);
  }
  if (look_at(high)) return crossing_between(table, before, high, value);
  return std::nullopt;
}

}  // namespace proofstone
