#include "engine/site/zone_sizing.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/method/registry.h"

namespace proofstone {
namespace {

/// Smallest Dp the class allows over the Dp asked for; absent where the class does not say.
std::optional<double> class_margin(const RockClass& rock_class, const RequiredSize& required) {
  const auto available = least_size_of(rock_class, required.percent_smaller);
  if (!available) return std::nullopt;
  return *available / required.size;
}

std::string size_symbol(const RequiredSize& required) {
  return "D" + percent_number(required.percent_smaller);
}

/// A note where the class and the method mean different things by "size".
void note_basis(Finding& finding, const RockClass& rock_class) {
  if (rock_class.band.basis().size == SizeMeaning::sphere) return;
  finding.reasons.push_back(fmt::format(
      "{} states sizes as {}; the formula's size is used as it stands, without conversion, as the "
      "manual that pairs them does (the careful side: the sphere of the same mass is larger).",
      rock_class.name, size_meaning_name(rock_class.band.basis().size)));
}

/// The smallest size of the class over the size asked for.
void add_margin_steps(Steps& steps, const RockClass& specified, const RequiredSize& required,
                      double margin) {
  const auto symbol = size_symbol(required);
  steps.given_rock(symbol + " min",
                   fmt::format("smallest {} that {} allows", symbol, specified.name),
                   margin * required.size, specified.source.sentence());
  steps.computed("margin", "class over requirement", fmt::format("{0} min / {0}", symbol),
                 measure(margin));
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
  note_basis(finding, specified);
  if (!counts(zone, asked) && asked.for_comparison) {
    finding.reasons.push_back("Shown for comparison, it does not govern: " + *asked.for_comparison);
  }

  const auto margin = class_margin(specified, asked.required);
  const auto asks = required_text(asked.required, wording);
  if (!margin) {
    finding.outcome = Outcome::not_yet_known;
    finding.sentence = fmt::format("Asks for {}; {} does not state one.", asks, specified.name);
    finding.next = "Give the class a limit at this percentage, or choose a class that has one.";
    return finding;
  }
  finding.margin = Margin{*margin, std::nullopt, std::nullopt};
  const Length available = *margin * asked.required.size;
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

bool holds(const RockClass& rock_class, const Zone& zone, const std::vector<SizeAsked>& all,
           std::string& why_not, const Wording& wording) {
  for (const auto& asked : all) {
    if (!counts(zone, asked)) continue;
    const auto margin = class_margin(rock_class, asked.required);
    if (margin && *margin >= 1) continue;
    why_not =
        fmt::format("{} fails by {}, which asks for {}", rock_class.name,
                    asked.method->description().title, required_text(asked.required, wording));
    if (margin) {
      why_not +=
          fmt::format(" where the class has {}", wording.rock(*margin * asked.required.size));
    }
    return false;
  }
  return true;
}

struct ClassChoice {
  const RockClass* smallest = nullptr;
  std::string why_next_smaller_fails;
};

ClassChoice choose_class(const ZoneSizing& sizing, const Wording& wording) {
  std::vector<const RockClass*> family;
  for (const auto& known : class_catalog()) {
    if (known.family == sizing.specified->family) family.push_back(&known);
  }
  std::sort(family.begin(), family.end(), [](const RockClass* a, const RockClass* b) {
    if (a->nominal_d50 < b->nominal_d50 || b->nominal_d50 < a->nominal_d50) {
      return a->nominal_d50 < b->nominal_d50;
    }
    return a->id < b->id;
  });
  ClassChoice choice;
  for (const auto* candidate : family) {
    std::string why_not;
    if (holds(*candidate, *sizing.zone, sizing.asked, why_not, wording)) {
      choice.smallest = candidate;
      break;
    }
    choice.why_next_smaller_fails = why_not;
  }
  return choice;
}

void name_silent_methods(Finding& finding, const std::vector<std::string>& silent) {
  for (const auto& reason : silent) finding.reasons.push_back(reason);
}

Finding class_finding(const ZoneSizing& sizing, const ClassChoice& choice,
                      const std::vector<std::string>& silent, const Wording& wording) {
  const auto& zone = *sizing.zone;
  Finding finding;
  finding.topic = Topic::rock_class;
  finding.about.zone = zone.id;
  finding.about.rock_class = sizing.specified->id;
  finding.id = "class." + zone.id;
  finding.title = fmt::format("{} for {}", sizing.specified->name, zone.name);
  finding.sources.push_back(sizing.specified->source);
  finding.reasons = sizing.specified->notes;
  name_silent_methods(finding, silent);
  if (!sizing.governing) {
    finding.outcome = Outcome::ask_the_designer;
    finding.sentence = "No sizing method speaks for this zone within its published range.";
    finding.next = "Ask the designer which method governs here.";
    return finding;
  }
  const auto& governing = sizing.asked[*sizing.governing];
  const auto margin = class_margin(*sizing.specified, governing.required);
  finding.governs = true;
  finding.about.method = governing.method->description().id;
  finding.about.flow_case = governing.water->flow_case->id;
  finding.margin = Margin{margin.value_or(0), std::nullopt, std::nullopt};
  finding.steps = governing.evaluation.steps;
  if (margin) add_margin_steps(finding.steps, *sizing.specified, governing.required, *margin);
  const std::string policy = zone.policy == GoverningPolicy::envelope
                                 ? "the method that leaves least margin governs"
                                 : "the designer's chosen method governs";
  finding.sentence = fmt::format(
      "{} governs in the {} ({}); it asks for {}.", governing.method->description().title,
      governing.water->flow_case->name, policy, required_text(governing.required, wording));
  if (choice.smallest != nullptr) {
    finding.sentence +=
        fmt::format(" The smallest class of this family that holds is {}.", choice.smallest->name);
    if (!choice.why_next_smaller_fails.empty()) {
      finding.reasons.push_back("Next smaller: " + choice.why_next_smaller_fails + ".");
    }
  } else {
    finding.sentence += " No class of this family holds.";
  }
  finding.values.push_back({"required_size", size_symbol(governing.required),
                            "governing stone size", measure(governing.required.size),
                            LengthUse::rock});
  if (margin && *margin >= 1) {
    finding.outcome = Outcome::meets;
    finding.next = choice.smallest != nullptr && choice.smallest != sizing.specified
                       ? fmt::format("Nothing to do; {} would hold too.", choice.smallest->name)
                       : "Nothing to do.";
  } else {
    finding.outcome = Outcome::falls_short;
    finding.next = choice.smallest != nullptr
                       ? fmt::format("Specify {}.", choice.smallest->name)
                       : "Rock of this family is not enough: change the lining or the water.";
  }
  return finding;
}

Finding layer_finding(const Zone& zone, const RockClass& specified, const Wording& wording) {
  Finding finding;
  finding.topic = Topic::layer;
  finding.about.zone = zone.id;
  finding.about.rock_class = specified.id;
  finding.id = "layer." + zone.id;
  finding.title = fmt::format("Layer thickness in {}", zone.name);
  finding.sources.push_back(
      {"USACE EM 1110-2-1601, 1994", "paragraph 3-2h", SourceStanding::memory});
  const auto least = least_layer_thickness(specified, zone.placement);
  if (!least) {
    finding.outcome = Outcome::not_yet_known;
    for (const auto& problem : least.problems()) finding.reasons.push_back(problem.sentence());
    finding.sentence = "The least thickness could not be found. " + finding.reasons.front();
    finding.next = "Give the class its largest stone.";
    return finding;
  }
  finding.steps = least->steps;
  const double margin = zone.layer_thickness / least->least;
  finding.steps.given_rock("T", "specified thickness", zone.layer_thickness, "document");
  finding.margin = Margin{margin, std::nullopt, std::nullopt};
  finding.values.push_back({"least_thickness", "T min", "least layer thickness",
                            measure(least->least), LengthUse::rock});
  // A layer drawn at exactly its least thickness holds; the tolerance only absorbs the rounding of
  // unit conversion.
  const bool thick_enough = margin >= 1 - 1e-9;
  finding.outcome = thick_enough ? Outcome::meets : Outcome::falls_short;
  finding.sentence = fmt::format("{} is specified; at least {} is needed, governed by {}.",
                                 wording.rock(zone.layer_thickness), wording.rock(least->least),
                                 least->governed_by);
  finding.next = thick_enough ? "Nothing to do."
                              : fmt::format("Draw the layer {} thick.", wording.rock(least->least));
  return finding;
}

}  // namespace

std::string required_text(const RequiredSize& required, const Wording& wording) {
  return fmt::format("a {} of at least {}", size_symbol(required), wording.rock(required.size));
}

bool counts(const Zone& zone, const SizeAsked& asked) {
  if (!asked.within_limits) return false;
  if (zone.policy == GoverningPolicy::envelope) return !asked.for_comparison;
  return asked.method->description().id == zone.chosen_method;
}

ZoneSizing size_zone(const Site&, const Zone& zone, const std::vector<ZoneWater>& water,
                     const Wording& wording) {
  ZoneSizing sizing;
  sizing.zone = &zone;
  sizing.specified = find_rock_class(zone.rock_class);
  std::vector<std::string> silent;
  for (const auto& at : water) {
    if (at.flow_case->purpose != FlowPurpose::design || !at.setting) continue;
    for (const auto* method : sizing_methods()) {
      // A formula for piers is not a silence worth telling on a bank.
      if (!serves(*method, zone.place)) continue;
      auto answer = method->size(*at.setting);
      const auto& title = method->description().title;
      if (answer.not_applicable) {
        silent.push_back(
            fmt::format("{} does not apply: {}", title, answer.not_applicable->reason));
      } else if (!answer.required) {
        silent.push_back(
            fmt::format("{} could not be computed: {}", title, answer.problems.front().sentence()));
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
    const double margin = class_margin(*sizing.specified, sizing.asked[i].required).value_or(0);
    if (!sizing.governing || margin < least) {
      sizing.governing = i;
      least = margin;
    }
  }
  const auto choice = sizing.governing ? choose_class(sizing, wording) : ClassChoice{};
  sizing.smallest_holding = choice.smallest;
  for (std::size_t i = 0; i < sizing.asked.size(); ++i) {
    auto finding = method_finding(zone, *sizing.specified, sizing.asked[i], wording);
    finding.governs = sizing.governing == i;
    sizing.findings.push_back(std::move(finding));
  }
  sizing.findings.push_back(class_finding(sizing, choice, silent, wording));
  sizing.findings.push_back(layer_finding(zone, *sizing.specified, wording));
  return sizing;
}

}  // namespace proofstone
