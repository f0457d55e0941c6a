#include "engine/blend/lots_to_zones.h"

#include <algorithm>

#include "engine/blend/integer_program.h"

namespace proofstone {
namespace {

/// One choice: this zone by this lot, or by none.
struct Choice {
  std::size_t zone = 0;
  std::optional<std::size_t> lot;
};

LinearRow one_of(const std::vector<Choice>& choices, std::size_t zone) {
  LinearRow row;
  row.sense = LinearRow::Sense::equal;
  row.bound = 1;
  for (const auto& choice : choices) row.coefficients.push_back(choice.zone == zone ? 1 : 0);
  return row;
}

/// Shares of what there is of a lot, so that rows of large and of small lots weigh the same.
LinearRow within_lot(const LotsToZones& question, const std::vector<Choice>& choices,
                     std::size_t lot, double available) {
  LinearRow row;
  row.bound = 1;
  for (const auto& choice : choices) {
    const bool takes = choice.lot == lot;
    row.coefficients.push_back(takes ? question.need[lot][choice.zone] / available : 0);
  }
  return row;
}

/// Costs as shares of the dearest, and what a zone left without rock weighs: more than all others.
struct Scale {
  double dearest = 1;
  double unserved = 1;
};

Scale scale_of(const LotsToZones& question, std::size_t zones) {
  double dearest = 0;
  for (const auto& row : question.cost) {
    for (const auto& cost : row) dearest = std::max(dearest, cost.value_or(0));
  }
  return {dearest > 0 ? dearest : 1, static_cast<double>(zones) + 1};
}

}  // namespace

bool ZoneAssignment::all_served() const {
  return std::all_of(lot_of_zone.begin(), lot_of_zone.end(),
                     [](const auto& lot) { return lot.has_value(); });
}

ZoneAssignment assign_lots(const LotsToZones& question) {
  ZoneAssignment assignment;
  const std::size_t lots = question.cost.size();
  const std::size_t zones = lots == 0 ? 0 : question.cost.front().size();
  assignment.lot_of_zone.resize(zones);
  if (zones == 0) {
    assignment.proven = true;
    return assignment;
  }
  const auto scale = scale_of(question, zones);
  IntegerProgram program;
  std::vector<Choice> choices;
  for (std::size_t zone = 0; zone < zones; ++zone) {
    for (std::size_t lot = 0; lot < lots; ++lot) {
      const auto& cost = question.cost[lot][zone];
      const auto& available = question.available[lot];
      if (!cost || (available && question.need[lot][zone] > *available)) continue;
      program.linear.add_variable(*cost / scale.dearest, 0, 1);
      choices.push_back({zone, lot});
    }
    program.linear.add_variable(scale.unserved, 0, 1);
    choices.push_back({zone, std::nullopt});
  }
  program.whole.assign(choices.size(), true);
  for (std::size_t zone = 0; zone < zones; ++zone) {
    program.linear.rows.push_back(one_of(choices, zone));
  }
  for (std::size_t lot = 0; lot < lots; ++lot) {
    const auto& available = question.available[lot];
    if (!available || !(*available > 0)) continue;
    program.linear.rows.push_back(within_lot(question, choices, lot, *available));
  }
  const auto solution = solve(program);
  if (solution.x.size() != choices.size()) return assignment;
  assignment.proven = solution.proven;
  for (std::size_t i = 0; i < choices.size(); ++i) {
    if (solution.x[i] < 0.5 || !choices[i].lot) continue;
    assignment.lot_of_zone[choices[i].zone] = choices[i].lot;
    assignment.cost += question.cost[*choices[i].lot][choices[i].zone].value_or(0);
  }
  return assignment;
}

}  // namespace proofstone
