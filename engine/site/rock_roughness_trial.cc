#include "engine/site/rock_roughness_trial.h"

#include "engine/hydraulics/rock_roughness_flow.h"
#include "engine/hydraulics/uniform_flow_near.h"
#include "engine/site/near_structure.h"
#include "engine/site/section_water.h"
#include "engine/site/zone_setting_of.h"

namespace proofstone {
namespace {

constexpr Length smallest_d90 = Length::feet(0.03);
constexpr Length largest_d90 = Length::feet(30);
constexpr double step_ratio = 1.1;
/// Leaves a tenth known to a hundred-millionth.
constexpr int halvings = 24;

Problem no_size(const SizingAnswer& answer) {
  if (answer.not_applicable) return {"not-applicable", answer.not_applicable->reason, "", "", ""};
  if (!answer.problems.empty()) return answer.problems.front();
  return {"no-size", "The method gives no size in this water.", "", "", ""};
}

/// Asks every method; the one that asks most stays in the trial.
Problems ask_methods(const RockRoughnessCase& of, RockRoughnessTrial& trial) {
  bool any = false;
  Problems silent;
  for (std::size_t i = 0; i < of.methods.size(); ++i) {
    auto answer = of.methods[i].method->size(trial.setting);
    if (!answer.required) {
      silent.push_back(no_size(answer));
      continue;
    }
    const Length required = size_as(*answer.required, of.specified->band.basis().size);
    const double scale = required / of.methods[i].available;
    if (any && scale <= trial.scale) continue;
    any = true;
    trial.scale = scale;
    trial.asks_most = i;
    trial.answer = std::move(answer);
  }
  if (any) silent.clear();
  return silent;
}

/// Whether rock of a scale is at least what its own roughness asks for; nothing where the water
/// over it cannot be computed.
struct Answer {
  std::optional<bool> holds;
  std::string why_not;
};

Answer ask(const RockRoughnessCase& of, Dimensionless coefficient, double scale) {
  const auto trial = water_over_rock(of, rock_roughness(scale * of.d90, coefficient));
  if (!trial) return {std::nullopt, trial.problems().front().sentence()};
  return {trial->scale <= scale, {}};
}

/// Between two scales of which one holds: the upper end of what is left after halving.
double halve_in(const RockRoughnessCase& of, Dimensionless coefficient, double below, double above,
                bool holds_above) {
  for (int i = 0; i < halvings; ++i) {
    const double middle = 0.5 * (below + above);
    const bool like_above =
        ask(of, coefficient, middle).holds.value_or(!holds_above) == holds_above;
    (like_above ? above : below) = middle;
  }
  return above;
}

}  // namespace

Expected<RockRoughnessTrial> water_over_rock(const RockRoughnessCase& of, Dimensionless roughness) {
  const auto lined = with_roughness(of.section->survey, of.stretch, roughness);
  if (!lined) return lined.problems();
  const ZoneSetting& before = *of.water->setting;
  const UniformFlowCase sought{of.water->flow->discharge, before.energy_slope,
                               of.section->composite_roughness};
  auto flow =
      uniform_flow_near(*lined, divisions_of(*of.section), sought, of.water->flow->water_level);
  if (!flow) return flow.problems();
  const FlowPart* channel = main_channel(*flow, *of.section);
  if (channel == nullptr || !(channel->top_width.si() > 0)) {
    return Problem{"dry", "The main channel carries no water.", "", "", ""};
  }
  RockRoughnessTrial trial;
  trial.roughness = roughness;
  trial.setting = before;
  take_channel(trial.setting, before.energy_slope, *channel);
  std::optional<BankGeometry> bank;
  const auto problems = take_ground(trial.setting, *of.zone, *lined, *flow, bank);
  if (!problems.empty()) return problems;
  if (of.water->velocity_at_rock) {
    const double change = trial.setting.average_velocity / before.average_velocity;
    trial.choices = choices_near_structure(*of.zone, *of.water->velocity_at_rock * change);
    trial.setting.method_choices = &*trial.choices;
  }
  const auto silent = ask_methods(of, trial);
  if (!silent.empty()) return silent;
  trial.flow = std::move(*flow);
  return trial;
}

BalancingScales find_balancing_scales(const RockRoughnessCase& of, Dimensionless coefficient) {
  BalancingScales found;
  const double largest = largest_d90 / of.d90;
  double below = smallest_d90 / of.d90;
  auto here = ask(of, coefficient, below);
  if (here.holds.value_or(false)) found.scales.push_back(below);
  while (here.holds) {
    found.largest_looked_at = below;
    found.largest_holds = *here.holds;
    const double above = step_ratio * below;
    if (above > largest) return found;
    const auto next = ask(of, coefficient, above);
    if (next.holds && *next.holds != *here.holds) {
      found.scales.push_back(halve_in(of, coefficient, below, above, *next.holds));
    }
    below = above;
    here = next;
  }
  found.ended_by = here.why_not;
  return found;
}

}  // namespace proofstone
