#include "engine/hydraulics/energy_branches.h"

namespace proofstone {

bool EnergyBranches::is_tranquil(double level) const {
  for (const EnergyBranch& branch : branches) {
    if (level < branch.high.level) return branch.rising;
  }
  return true;
}

double velocity_head(const SectionState& state, double discharge) {
  const double velocity = discharge / state.area;
  return state.alpha * velocity * velocity / (2 * g_si);
}

double energy_level(const SectionState& state, double discharge) {
  return state.level + velocity_head(state, discharge);
}

double specific_force(const SectionState& state, double discharge) {
  return state.beta * discharge * discharge / (g_si * state.area) + state.first_moment;
}

std::optional<EnergyBranches> energy_branches(const LevelTable& table, double discharge) {
  const auto growth = [&](const SectionState& state) {
    return 1 - discharge * discharge * state.criticality;
  };
  const auto fall = [&](const SectionState& state) { return -growth(state); };
  EnergyBranches all;
  SectionState low = table.states().front();
  bool rising = growth(low) >= 0;
  if (rising) all.critical.push_back(low);  // less water than the table can tell from none
  for (std::size_t i = 1; i < table.states().size(); ++i) {
    const SectionState& before = table.states()[i - 1];
    const SectionState& next = table.states()[i];
    const bool rises = growth(next) >= 0;
    if (rises == rising) continue;
    const SectionState turn = rises ? crossing_between(table, before, next, growth)
                                    : crossing_between(table, before, next, fall);
    all.branches.push_back({low, turn, rising});
    if (rises) all.critical.push_back(turn);
    low = turn;
    rising = rises;
  }
  if (!rising) return std::nullopt;
  all.branches.push_back({low, table.states().back(), true});
  for (std::size_t i = 1; i < all.critical.size(); ++i) {
    if (energy_level(all.critical[i], discharge) < energy_level(all.used_critical(), discharge)) {
      all.least = i;
    }
  }
  return all;
}

}  // namespace proofstone
