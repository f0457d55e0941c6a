#pragma once

#include <deque>
#include <optional>
#include <vector>

#include "engine/hydraulics/energy_step.h"

namespace proofstone {

/// The level kept at one section, and what each pass found there.
struct KeptLevel {
  BalancedLevel kept;
  FlowRegime regime = FlowRegime::subcritical;
  std::optional<BalancedLevel> tranquil;
  std::optional<BalancedLevel> rapid;
  std::vector<ProfileNote> notes;
};

/// What the passes over a reach found. Internal to the hydraulics.
struct PassedReach {
  std::vector<EnergyBranches> energies;
  std::vector<KeptLevel> levels;
  StepChoices choices;
};

/// Makes the upstream and the downstream pass and keeps, at each section, the flow of the greater
/// specific force.
Expected<PassedReach> pass_through(const std::deque<LevelTable>& tables,
                                   const ProfileCase& flow_case);

}  // namespace proofstone
