#pragma once

#include "engine/hydraulics/energy_branches.h"
#include "engine/hydraulics/profile.h"

namespace proofstone {

/// One section of a reach with the energy of the discharge in it.
struct Station {
  const LevelTable& table;
  const EnergyBranches& energy;
};

/// A level that balances the energy with the neighbouring section, or the critical one.
struct BalancedLevel {
  SectionState state;
  bool balanced = true;  ///< false: the critical level stands in its place
  bool at_ineffective_height = false;
  bool others_balance = false;  ///< further levels would do too
};

/// What of the standard step stays the same along a reach.
struct StepChoices {
  double discharge = 0;  ///< m³/s
  FrictionMean friction = FrictionMean::average_conveyance;
};

/// Slope of the energy line at a section, (Q/K)².
double friction_slope(const SectionState& state, double discharge);

/// Energy lost between two sections by friction and by narrowing or widening, m.
double energy_lost(const LevelTable& upstream, const SectionState& up, const LevelTable& downstream,
                   const SectionState& down, const StepChoices& choices);

/// Tranquil flow: the level upstream of a known one. Of several, the lowest at or above the
/// critical level of least energy; below that the highest.
BalancedLevel level_upstream(const Station& upstream, const LevelTable& downstream,
                             const SectionState& known, const StepChoices& choices);

/// Rapid flow: the level downstream of a known one. Of several, the one of the depth nearest to the
/// known one's.
BalancedLevel level_downstream(const LevelTable& upstream, const SectionState& known,
                               const Station& downstream, const StepChoices& choices);

}  // namespace proofstone
