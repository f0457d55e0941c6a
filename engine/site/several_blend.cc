#include "engine/site/several_blend.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/blend/load_plan.h"
#include "engine/site/judged_blend.h"
#include "engine/site/site_blend.h"

namespace proofstone {
namespace {

constexpr const char* cost_of_added_key = "cost_of_added";

void put_cost(Finding& finding, double for_a_tonne) {
  finding.values.push_back({cost_of_added_key, "",
                            "what is added costs, for each tonne (2205 lb) of the blend",
                            measure(for_a_tonne), LengthUse::ground});
}

std::optional<double> cost_in(const Finding& finding) {
  for (const auto& value : finding.values) {
    if (value.key == cost_of_added_key) return value.value.si;
  }
  return std::nullopt;
}

/// The lot's own rock first, then the rocks on offer.
std::vector<OfferedMaterial> rocks_of(const Site& site, const LotEvidence& evidence) {
  std::vector<OfferedMaterial> rocks{
      {evidence.lot->id, evidence.lot->name, evidence.together->curve, 0.0, {}, {}, {}}};
  for (auto& material : offered_materials(site)) {
    if (is_rock(site.materials.at(material.id))) rocks.push_back(std::move(material));
  }
  return rocks;
}

/// What one load of each costs; one each where a price is not known.
std::vector<double> costs_of(const std::vector<OfferedMaterial>& rocks, bool priced) {
  std::vector<double> costs{0};
  for (std::size_t i = 1; i < rocks.size(); ++i) {
    costs.push_back(priced ? rocks[i].price_per_tonne.value_or(0) : 1);
  }
  return costs;
}

Expected<BlendOption> option_of(const std::vector<OfferedMaterial>& rocks, const LoadPlan& plan,
                                const RequiredSize& required) {
  std::vector<BlendPart> parts;
  int others = 0;
  for (std::size_t i = 0; i < rocks.size(); ++i) {
    if (plan.loads[i] == 0) continue;
    parts.push_back({rocks[i].gradation, static_cast<double>(plan.loads[i])});
    if (i > 0) others += plan.loads[i];
  }
  auto mixed = blend(parts);
  if (!mixed) return mixed.problems();
  BlendOption option{plan.loads[0], others, std::move(*mixed), true, {}, std::nullopt};
  if (const auto size = option.gradation.size_at(required.percent_smaller)) {
    option.margin = *size / required.size;
  }
  return option;
}

std::string loads_of_plan(const std::vector<OfferedMaterial>& rocks, const LoadPlan& plan) {
  std::vector<std::string> words;
  for (std::size_t i = 1; i < rocks.size(); ++i) {
    if (plan.loads[i] == 0) continue;
    words.push_back(fmt::format("{} of {}", plan.loads[i], rocks[i].name));
  }
  return fmt::format("Into every {} {} of {} mix loads: {}.", plan.loads[0],
                     plan.loads[0] == 1 ? "load" : "loads", rocks[0].name, listed(words));
}

}  // namespace

bool is_rock(const Material& material) {
  constexpr Length finest = Length::millimeters(25);
  constexpr double least_kept = 10;  // percent
  return material.gradation.percent_smaller(finest) < least_kept;
}

std::optional<Finding> several_blend(const Site& site, const LotEvidence& evidence,
                                     const MeasuredMargin& asks, const Wording& wording) {
  const auto rocks = rocks_of(site, evidence);
  if (rocks.size() < 3) return std::nullopt;
  auto target = blend_target(rocks, evidence.ordered->band);
  if (!target) return std::nullopt;
  const auto& required = asks.required;
  add_condition(*target, rocks,
                {required.size, BandCondition::Sense::at_most, required.percent_smaller,
                 fmt::format("D{} at least {}", percent_number(required.percent_smaller),
                             wording.rock(required.size)),
                 std::nullopt},
                evidence.together->curve.basis().size);
  const bool priced = std::all_of(rocks.begin(), rocks.end(), [](const OfferedMaterial& rock) {
    return rock.price_per_tonne.has_value();
  });
  const auto plan = cheapest_round(*target, costs_of(rocks, priced), 0, most_loads_in_a_round);
  if (!plan) return std::nullopt;
  const auto added = std::count_if(plan->loads.begin() + 1, plan->loads.end(),
                                   [](int loads) { return loads > 0; });
  if (added < 2) return std::nullopt;
  const auto option = option_of(rocks, *plan, required);
  if (!option) return std::nullopt;
  const auto judged = judge_blend(evidence, *option, required, site.evidence.risks());

  Finding finding;
  finding.topic = Topic::remedy;
  finding.about.lot = evidence.lot->id;
  finding.id = fmt::format("remedy.{}.blend-of-several", evidence.lot->id);
  finding.title = "Blend with several materials";
  finding.outcome = judged.is_shown() ? Outcome::meets : Outcome::not_yet_known;
  finding.sentence = fmt::format(
      "{} {} the blend keeps every limit of {} and leaves a margin of {}; {}.",
      loads_of_plan(rocks, *plan), judged.is_shown() ? "The looks show that" : "By estimate",
      evidence.ordered->name, margin_text(option->margin.value_or(0)),
      priced ? "no whole loads of these materials cost less" : "none takes less of the others");
  finding.next = "Spread and mix before loading out, then count 100 stones of the blend on a grid.";
  if (priced) put_cost(finding, plan->cost);
  state_judged(finding, judged);
  finding.sources.push_back({"Mass balance of gradations; branch and bound over whole loads",
                             "weighted mean of percents smaller", SourceStanding::computed});
  finding.cautions.push_back(
      "The other materials are taken from their suppliers' certificates as exact, and all loads as "
      "alike in mass; the mixed pile must be measured before it is used.");
  return finding;
}

void state_cost(Finding& finding, const Material& material, const BlendOption& option) {
  if (!material.state.price_per_tonne) return;
  const double loads = option.loads_of_this_rock + option.loads_of_other;
  put_cost(finding, *material.state.price_per_tonne * option.loads_of_other / loads);
}

void rank_by_cost(std::vector<Finding>& blends) {
  std::vector<Finding> serving;
  std::vector<Finding> others;
  for (auto& one : blends) {
    (one.outcome == Outcome::falls_short ? others : serving).push_back(std::move(one));
  }
  const bool all_priced = std::all_of(serving.begin(), serving.end(), [](const Finding& finding) {
    return cost_in(finding).has_value();
  });
  if (all_priced) {
    std::sort(serving.begin(), serving.end(), [](const Finding& a, const Finding& b) {
      const double cost_a = cost_in(a).value_or(0);
      const double cost_b = cost_in(b).value_or(0);
      return cost_a < cost_b || (!(cost_b < cost_a) && a.id < b.id);
    });
  }
  blends = std::move(serving);
  std::move(others.begin(), others.end(), std::back_inserter(blends));
}

}  // namespace proofstone
