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

/// Water over rock of one roughness, before a method is asked.
struct WaterOverRock {
  SectionFlow flow;
  ZoneSetting setting;
  HeldJson choices;
};

Expected<WaterOverRock> flow_over_rock(const RockRoughnessCase& of, Dimensionless roughness,
                                       Length near) {
  const auto lined = with_roughness(of.section->survey, of.stretch, roughness);
  if (!lined) return lined.problems();
  const ZoneSetting& before = *of.water->setting;
  const UniformFlowCase sought{of.water->flow->discharge, before.energy_slope,
                               of.section->composite_roughness};
  auto flow = uniform_flow_near(*lined, divisions_of(*of.section), sought, near);
  if (!flow) return flow.problems();
  const FlowPart* channel = main_channel(*flow, *of.section);
  if (channel == nullptr || !(channel->top_width.si() > 0)) {
    return Problem{"dry", "The main channel carries no water.", "", "", ""};
  }
  WaterOverRock water;
  water.setting = before;
  take_channel(water.setting, before.energy_slope, *channel);
  std::optional<BankGeometry> bank;
  const auto problems = take_ground(water.setting, *of.zone, *lined, *flow, bank);
  if (!problems.empty()) return problems;
  if (of.water->velocity_at_rock) {
    const double change = water.setting.average_velocity / before.average_velocity;
    water.choices = choices_near_structure(*of.zone, *of.water->velocity_at_rock * change);
    water.setting.method_choices = &*water.choices;
  }
  water.flow = std::move(*flow);
  return water;
}

/// The method that asks for most, and the scale at which rock like the class is just that.
struct AsksMost {
  std::size_t method = 0;
  double scale = 0;
};

/// Problems: why no method gives a size.
Expected<AsksMost> ask_methods(const RockRoughnessCase& of, const ZoneSetting& setting) {
  std::optional<AsksMost> most;
  for (std::size_t i = 0; i < of.methods.size(); ++i) {
    const auto required = of.methods[i].method->required_size(setting);
    if (!required) continue;
    const Length size = size_as(*required, of.specified->band.basis().size);
    const double scale = size / of.methods[i].available;
    if (!most || scale > most->scale) most = AsksMost{i, scale};
  }
  if (most) return *most;
  Problems silent;
  for (const AskingMethod& asking : of.methods) {
    silent.push_back(no_size(asking.method->size(setting)));
  }
  return silent;
}

/// Whether rock of a scale is at least what its own roughness asks for; nothing where the water
/// over it cannot be computed.
struct Answer {
  std::optional<bool> holds;
  std::string why_not;
};

/// Asks rock of one scale after another, each from the level over the last one.
class Questions {
 public:
  Questions(const RockRoughnessCase& of, Dimensionless coefficient)
      : of_(of), coefficient_(coefficient), level_(of.water->flow->water_level) {}

  Answer ask(double scale) {
    const auto water = flow_over_rock(of_, rock_roughness(scale * of_.d90, coefficient_), level_);
    if (!water) return {std::nullopt, water.problems().front().sentence()};
    level_ = water->flow.water_level;
    const auto most = ask_methods(of_, water->setting);
    if (!most) return {std::nullopt, most.problems().front().sentence()};
    return {most->scale <= scale, {}};
  }

  /// Between two scales of which one holds: the upper end of what is left after halving.
  double halve_in(double below, double above, bool holds_above) {
    for (int i = 0; i < halvings; ++i) {
      const double middle = 0.5 * (below + above);
      const bool like_above = ask(middle).holds.value_or(!holds_above) == holds_above;
      (like_above ? above : below) = middle;
    }
    return above;
  }

 private:
  const RockRoughnessCase& of_;
  Dimensionless coefficient_;
  Length level_;
};

}  // namespace

Expected<RockRoughnessTrial> water_over_rock(const RockRoughnessCase& of, Dimensionless roughness,
                                             Length near) {
  auto water = flow_over_rock(of, roughness, near);
  if (!water) return water.problems();
  const auto most = ask_methods(of, water->setting);
  if (!most) return most.problems();
  RockRoughnessTrial trial;
  trial.roughness = roughness;
  trial.flow = std::move(water->flow);
  trial.setting = std::move(water->setting);
  trial.choices = std::move(water->choices);
  trial.asks_most = most->method;
  trial.answer = of.methods[most->method].method->size(trial.setting);
  trial.scale = most->scale;
  return trial;
}

BalancingScales find_balancing_scales(const RockRoughnessCase& of, Dimensionless coefficient) {
  BalancingScales found;
  const double largest = largest_d90 / of.d90;
  double below = smallest_d90 / of.d90;
  Questions questions(of, coefficient);
  auto here = questions.ask(below);
  if (here.holds.value_or(false)) found.scales.push_back(below);
  while (here.holds) {
    found.largest_looked_at = below;
    found.largest_holds = *here.holds;
    const double above = step_ratio * below;
    if (above > largest) return found;
    const auto next = questions.ask(above);
    if (next.holds && *next.holds != *here.holds) {
      found.scales.push_back(questions.halve_in(below, above, *next.holds));
    }
    below = above;
    here = next;
  }
  found.ended_by = here.why_not;
  return found;
}

}  // namespace proofstone
