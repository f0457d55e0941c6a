#include "engine/hydraulics/energy_step.h"

#include <cmath>

namespace proofstone {

namespace {

double mean_friction_slope(const SectionState& up, const SectionState& down,
                           const StepChoices& choices) {
  const double q = choices.discharge;
  const double s1 = friction_slope(up, q);
  const double s2 = friction_slope(down, q);
  switch (choices.friction) {
    case FrictionMean::average_conveyance: {
      const double slope_root = 2 * q / (up.conveyance + down.conveyance);
      return slope_root * slope_root;
    }
    case FrictionMean::arithmetic:
      return (s1 + s2) / 2;
    case FrictionMean::geometric:
      return std::sqrt(s1 * s2);
    case FrictionMean::harmonic:
      return 2 * s1 * s2 / (s1 + s2);
  }
  return 0;
}

/// Length between the sections, weighted by what flows left, in the channel and right.
double weighted_length(const LevelTable& upstream, const SectionState& up,
                       const LevelTable& downstream, const SectionState& down) {
  const ReachLengths& lengths = upstream.section().to_next;
  const double left = (upstream.left_share(up) + downstream.left_share(down)) / 2;
  const double right = (upstream.right_share(up) + downstream.right_share(down)) / 2;
  return left * lengths.left.meters() + right * lengths.right.meters() +
         (1 - left - right) * lengths.channel.meters();
}

/// Above this the energy does not balance: the level stands at a jump of the conveyance.
constexpr double unbalanced_m = 1e-6;

/// Every level of the rising (tranquil) or falling (rapid) branches at which `value` rises through
/// zero, from the lowest up.
template <class Value>
std::vector<SectionState> balanced_levels(const Station& station, bool tranquil, Value&& value) {
  std::vector<SectionState> found;
  for (const EnergyBranch& branch : station.energy.branches) {
    if (branch.rising != tranquil) continue;
    const auto level = first_rise_through_zero(station.table, branch.low, branch.high, value);
    if (level) found.push_back(*level);
  }
  return found;
}

BalancedLevel critical_in_place(const Station& station) {
  BalancedLevel level;
  level.state = station.energy.used_critical();
  level.balanced = false;
  return level;
}

/// Where the energy jumps at the foot of a tranquil branch, past the balance, no level balances
/// though the least critical level has too little energy: then the lowest critical level that has
/// enough stands in place.
template <class Excess>
BalancedLevel critical_with_energy_enough(const Station& station, Excess&& excess) {
  BalancedLevel level = critical_in_place(station);
  if (excess(level.state) >= 0) return level;
  for (const SectionState& state : station.energy.critical) {
    if (excess(state) < 0) continue;
    level.state = state;
    break;
  }
  return level;
}

double depth_at(const LevelTable& table, const SectionState& state) {
  return state.level - table.section().section.lowest().meters();
}

}  // namespace

double friction_slope(const SectionState& state, double discharge) {
  const double root = discharge / state.conveyance;
  return root * root;
}

double energy_lost(const LevelTable& upstream, const SectionState& up, const LevelTable& downstream,
                   const SectionState& down, const StepChoices& choices) {
  const double head_up = velocity_head(up, choices.discharge);
  const double head_down = velocity_head(down, choices.discharge);
  const LossCoefficients& losses = upstream.section().losses;
  const double share =
      head_down > head_up ? losses.contraction.number() : losses.expansion.number();
  return weighted_length(upstream, up, downstream, down) * mean_friction_slope(up, down, choices) +
         share * std::abs(head_down - head_up);
}

BalancedLevel level_upstream(const Station& upstream, const LevelTable& downstream,
                             const SectionState& known, const StepChoices& choices) {
  const double known_energy = energy_level(known, choices.discharge);
  const auto excess = [&](const SectionState& state) {
    return energy_level(state, choices.discharge) - known_energy -
           energy_lost(upstream.table, state, downstream, known, choices);
  };
  const auto found = balanced_levels(upstream, true, excess);
  if (found.empty()) return critical_with_energy_enough(upstream, excess);
  const double from = upstream.energy.used_critical().level;
  BalancedLevel level;
  level.state = found.back();
  for (const SectionState& state : found) {
    if (state.level < from) continue;
    level.state = state;
    break;
  }
  level.at_ineffective_height = excess(level.state) > unbalanced_m;
  level.others_balance = found.size() > 1;
  return level;
}

BalancedLevel level_downstream(const LevelTable& upstream, const SectionState& known,
                               const Station& downstream, const StepChoices& choices) {
  const double known_energy = energy_level(known, choices.discharge);
  const auto excess = [&](const SectionState& state) {
    return known_energy - energy_level(state, choices.discharge) -
           energy_lost(upstream, known, downstream.table, state, choices);
  };
  const auto found = balanced_levels(downstream, false, excess);
  if (found.empty()) return critical_in_place(downstream);
  const double depth = depth_at(upstream, known);
  BalancedLevel level;
  level.state = found.front();
  for (const SectionState& state : found) {
    const double nearest = std::abs(depth_at(downstream.table, level.state) - depth);
    if (std::abs(depth_at(downstream.table, state) - depth) < nearest) level.state = state;
  }
  level.at_ineffective_height = excess(level.state) > unbalanced_m;
  level.others_balance = found.size() > 1;
  return level;
}

}  // namespace proofstone
