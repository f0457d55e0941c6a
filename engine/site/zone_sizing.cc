#include "engine/site/zone_sizing.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/method/registry.h"
#include "engine/site/applicability.h"
#include "engine/site/class_choice.h"
#include "engine/site/class_finding.h"
#include "engine/site/zone_layer.h"

namespace proofstone {
namespace {

/// A note where the class and the method mean different things by "size".
void note_basis(Finding& finding, const RockClass& rock_class, const RequiredSize& required) {
  const auto meaning = rock_class.band.basis().size;
  if (meaning == SizeMeaning::sphere) return;
  if (required.by_mass) {
    finding.reasons.push_back(fmt::format(
        "The method asks for a mass; {} states sizes as {}: a stone of that mass, 0.85·γ·d³.",
        rock_class.name, size_meaning_name(meaning)));
    return;
  }
  finding.reasons.push_back(fmt::format(
      "{} states sizes as {}; the formula's size is used as it stands, without conversion, as the "
      "manual that pairs them does (the careful side: the sphere of the same mass is larger).",
      rock_class.name, size_meaning_name(rock_class.band.basis().size)));
}

Finding method_finding(const Zone& zone, const RockClass& specified, const SizeAsked& asked,
                       const Wording& wording) {
  const auto& about = asked.method->description();
  Finding finding;
  finding.topic = Topic::rock_size;
  finding.about.zone = zone.id;
  finding.about.flow_case = asked.water->flow_case->id;
  finding.about.method = about.id;
  finding.about.rock_class = specified.id;
  finding.id = fmt::format("rock-size.{}.{}.{}", zone.id, asked.water->flow_case->id, about.id);
  finding.title = about.title;
  finding.steps = asked.evaluation.steps;
  finding.sources = about.sources;
  finding.limits = about.limits;
  finding.limits_not_kept = asked.evaluation.limits_not_kept;
  finding.cautions = about.cautions;
  finding.values.push_back({"required_size", size_symbol(asked.required), "required stone size",
                            measure(asked.required.size), LengthUse::rock});
  note_basis(finding, specified, asked.required);
  if (!counts(zone, asked) && asked.for_comparison) {
    finding.reasons.push_back("Shown for comparison, it does not govern: " + *asked.for_comparison);
  }

  const auto margin = class_margin(specified, asked);
  const auto asks = required_text(asked.required, wording);
  if (!margin) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence = fmt::format("Asks for {}; {} does not state one.", asks, specified.name);
    finding.next = "Give the class a limit at this percentage, or choose a class that has one.";
    return finding;
  }
  finding.margin = Margin{*margin, std::nullopt, std::nullopt};
  const Length available = *margin * size_as(asked.required, specified.band.basis().size);
  add_margin_steps(finding.steps, specified, asked.required, *margin);
  finding.sentence = fmt::format("Asks for {}; {} has at least {}: margin {}.", asks,
                                 specified.name, wording.rock(available), margin_text(*margin));
  if (!counts(zone, asked) && asked.for_comparison) {
    finding.sentence += " For comparison only; it does not govern.";
  }
  if (!asked.within_limits) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "The zone stands outside this method's published range. Judge it by another.";
  } else if (*margin >= 1) {
    finding.outcome = Outcome::meets;
    finding.next = "Nothing to do.";
  } else if (!counts(zone, asked) && asked.for_comparison) {
    finding.outcome = Outcome::ask_the_designer;
    finding.next = "Settle the inputs that this method takes by default, or judge by another.";
  } else {
    finding.outcome = Outcome::falls_short;
    finding.next = "Choose a larger class, or change the water or the slope.";
  }
  return finding;
}

ClassFamily family_of(const Site& site, const RockClass& rock_class) {
  for (auto& family : class_families(site)) {
    if (family.name == rock_class.family) return family;
  }
  return {rock_class.family, {&rock_class}};
}

}  // namespace

std::string size_symbol(const RequiredSize& required) {
  return "D" + percent_number(required.percent_smaller);
}

void add_margin_steps(Steps& steps, const RockClass& specified, const RequiredSize& required,
                      double margin) {
  const auto symbol = size_symbol(required);
  if (required.by_mass) {
    steps.computed_rock(symbol, "size asked for, as the class measures stones",
                        "of the stone of that mass",
                        size_as(required, specified.band.basis().size));
  }
  steps.given_rock(
      symbol + " min", fmt::format("smallest {} that {} allows", symbol, specified.name),
      margin * size_as(required, specified.band.basis().size), specified.source.sentence());
  steps.computed("margin", "class over requirement", fmt::format("{0} min / {0}", symbol),
                 measure(margin));
}

std::string required_text(const RequiredSize& required, const Wording& wording) {
  return fmt::format("a {} of at least {}", size_symbol(required), wording.rock(required.size));
}

bool counts(const Zone& zone, const SizeAsked& asked) {
  if (!asked.within_limits) return false;
  const auto& id = asked.method->description().id;
  switch (zone.policy) {
    case GoverningPolicy::envelope:
      return !asked.for_comparison;
    case GoverningPolicy::chosen:
      return id == zone.chosen_method;
    case GoverningPolicy::weighted:
      break;
  }
  return zone.weights.contains(id);
}

ZoneSizing size_zone(const Site& site, const Zone& zone, const std::vector<ZoneWater>& water,
                     const Wording& wording) {
  ZoneSizing sizing;
  sizing.zone = &zone;
  sizing.specified = find_class(site, zone.rock_class);
  for (const auto& at : water) {
    if (at.flow_case->purpose != FlowPurpose::design || !at.setting) continue;
    for (const auto* method : sizing_methods()) {
      // A formula for piers is not a silence worth telling on a bank.
      if (!serves(*method, zone.place)) continue;
      auto answer = method->size(*at.setting);
      if (answer.not_applicable) {
        sizing.silent.push_back({method, &at, false, answer.not_applicable->reason});
      } else if (!answer.required) {
        sizing.silent.push_back({method, &at, true, answer.problems.front().sentence()});
      } else {
        SizeAsked asked{method,
                        &at,
                        *answer.required,
                        answer.evaluation.limits_not_kept.empty(),
                        std::move(answer.evaluation),
                        std::move(answer.for_comparison)};
        sizing.asked.push_back(std::move(asked));
      }
    }
  }
  double least = 0;
  for (std::size_t i = 0; i < sizing.asked.size(); ++i) {
    if (!counts(zone, sizing.asked[i])) continue;
    const double margin = class_margin(*sizing.specified, sizing.asked[i]).value_or(0);
    if (!sizing.governing || margin < least) {
      sizing.governing = i;
      least = margin;
    }
  }
  const auto choice = sizing.governing
                          ? choose_class(family_of(site, *sizing.specified), sizing, wording)
                          : ClassChoice{};
  sizing.smallest_holding = choice.smallest;
  for (std::size_t i = 0; i < sizing.asked.size(); ++i) {
    auto finding = method_finding(zone, *sizing.specified, sizing.asked[i], wording);
    finding.governs = sizing.governing == i;
    sizing.findings.push_back(std::move(finding));
  }
  sizing.findings.push_back(applicability_finding(sizing, wording));
  if (sizing.governing) sizing.findings.push_back(families_finding(site, sizing, wording));
  sizing.findings.push_back(class_finding(sizing, choice, wording));
  sizing.findings.push_back(layer_finding(sizing, wording));
  return sizing;
}

}  // namespace proofstone
