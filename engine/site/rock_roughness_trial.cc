#include "engine/site/rock_roughness_trial.h"

#include "engine/hydraulics/rock_roughness_flow.h"
#include "engine/site/near_structure.h"
#include "engine/site/section_water.h"
#include "engine/site/zone_setting_of.h"

namespace proofstone {
namespace {

constexpr Length smallest = Length::feet(0.02);
constexpr Length largest = Length::feet(20);
constexpr double step_ratio = 1.1;
/// Leaves a tenth known to a hundred-millionth.
constexpr int halvings = 24;

Problem no_size(const SizingAnswer& answer) {
  if (answer.not_applicable) return {"not-applicable", answer.not_applicable->reason, "", "", ""};
  if (!answer.problems.empty()) return answer.problems.front();
  return {"no-size", "The method gives no size in this water.", "", "", ""};
}

/// Whether rock of a size is at least what its own roughness asks for; nothing where the water
/// over it cannot be computed.
struct Answer {
  std::optional<bool> holds;
  std::string why_not;
};

Answer ask(const RockRoughnessCase& of, Dimensionless coefficient, Length size) {
  const auto trial = water_over_rock(of, rock_roughness(of.d90_over_size * size, coefficient));
  if (!trial) return {std::nullopt, trial.problems().front().sentence()};
  return {trial->required <= size, {}};
}

Length halve_in(const RockRoughnessCase& of, Dimensionless coefficient, Length below, Length above,
                bool holds_above) {
  for (int i = 0; i < halvings; ++i) {
    const Length middle = 0.5 * (below + above);
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
  Steps unused;
  auto flow = normal_flow(*lined, divisions_of(*of.section), of.water->flow->discharge,
                          before.energy_slope, of.section->composite_roughness, unused);
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
  trial.answer = of.method->size(trial.setting);
  if (!trial.answer.required) return no_size(trial.answer);
  trial.required = size_as(*trial.answer.required, of.specified->band.basis().size);
  trial.flow = std::move(*flow);
  return trial;
}

BalancingSizes find_balancing_sizes(const RockRoughnessCase& of, Dimensionless coefficient) {
  BalancingSizes found;
  found.smallest_looked_at = smallest;
  Length below = smallest;
  auto here = ask(of, coefficient, below);
  if (here.holds.value_or(false)) found.sizes.push_back(below);
  while (here.holds) {
    found.largest_looked_at = below;
    found.largest_holds = *here.holds;
    const Length above = step_ratio * below;
    if (above > largest) return found;
    const auto next = ask(of, coefficient, above);
    if (next.holds && *next.holds != *here.holds) {
      found.sizes.push_back(halve_in(of, coefficient, below, above, *next.holds));
    }
    below = above;
    here = next;
  }
  found.ended_by = here.why_not;
  return found;
}

}  // namespace proofstone
