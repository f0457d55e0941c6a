#include "engine/site/class_choice.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/site/weighted_size.h"

namespace proofstone {
namespace {

/// How a class stands under the zone's policy.
struct Standing {
  double margin = 0;
  std::string why_not;  ///< empty when it holds
};

std::string shortfall(const RockClass& rock_class, const SizeAsked& asked,
                      const std::optional<double>& margin, const Wording& wording) {
  auto words =
      fmt::format("{} fails by {}, which asks for {}", rock_class.name,
                  asked.method->description().title, required_text(asked.required, wording));
  if (margin) {
    const auto needed = size_as(asked.required, rock_class.band.basis().size);
    words += fmt::format(" where the class has {}", wording.rock(*margin * needed));
  } else {
    words += "; the class does not state one";
  }
  return words;
}

Standing standing_by_envelope(const RockClass& rock_class, const ZoneSizing& sizing,
                              const Wording& wording) {
  Standing standing;
  bool first = true;
  for (const auto& asked : sizing.asked) {
    if (!counts(*sizing.zone, asked)) continue;
    const auto margin = class_margin(rock_class, asked);
    if (first || margin.value_or(0) < standing.margin) standing.margin = margin.value_or(0);
    first = false;
    if (standing.why_not.empty() && margin.value_or(0) < 1) {
      standing.why_not = shortfall(rock_class, asked, margin, wording);
    }
  }
  return standing;
}

Standing standing_of(const RockClass& rock_class, const ZoneSizing& sizing,
                     const Wording& wording) {
  if (sizing.zone->policy != GoverningPolicy::weighted) {
    return standing_by_envelope(rock_class, sizing, wording);
  }
  const auto weighted = weigh_sizes(sizing, rock_class);
  if (!weighted) return {0, rock_class.name + " does not state a size that a method asks for"};
  Standing standing{weighted->margin, {}};
  if (standing.margin < 1) {
    standing.why_not = fmt::format("{} fails by the weighted size: margin {}", rock_class.name,
                                   margin_text(Margin{standing.margin, {}, {}}));
  }
  return standing;
}

void sort_by_size(std::vector<const RockClass*>& classes) {
  std::sort(classes.begin(), classes.end(), [](const RockClass* a, const RockClass* b) {
    if (a->nominal_d50 < b->nominal_d50 || b->nominal_d50 < a->nominal_d50) {
      return a->nominal_d50 < b->nominal_d50;
    }
    return a->id < b->id;
  });
}

void add_to(std::vector<ClassFamily>& families, const RockClass& rock_class) {
  const auto known = std::find_if(families.begin(), families.end(), [&](const ClassFamily& family) {
    return family.name == rock_class.family;
  });
  if (known != families.end()) {
    known->classes.push_back(&rock_class);
  } else {
    families.push_back({rock_class.family, {&rock_class}});
  }
}

std::string family_line(const ClassFamily& family, const ClassChoice& choice,
                        const Wording& wording) {
  if (choice.smallest == nullptr) {
    return fmt::format("{}: no class holds. {}.", family.name, choice.why_next_smaller_fails);
  }
  auto line = fmt::format("{}: {} (nominal D50 {}), margin {}.", family.name, choice.smallest->name,
                          wording.rock(choice.smallest->nominal_d50),
                          margin_text(Margin{choice.margin, {}, {}}));
  if (choice.why_next_smaller_fails.empty()) return line + " It is the smallest of its family.";
  return line + " Next smaller: " + choice.why_next_smaller_fails + ".";
}

}  // namespace

std::optional<double> class_margin(const RockClass& rock_class, const SizeAsked& asked) {
  const auto available = least_size_of(rock_class, asked.required.percent_smaller,
                                       density_of(asked.water->setting->rock));
  if (!available) return std::nullopt;
  return *available / size_as(asked.required, rock_class.band.basis().size);
}

std::vector<ClassFamily> class_families(const Site& site) {
  std::vector<ClassFamily> families;
  for (const auto& [id, own] : site.classes) add_to(families, own);
  for (const auto& known : class_catalog()) {
    if (!site.classes.contains(known.id)) add_to(families, known);
  }
  for (auto& family : families) sort_by_size(family.classes);
  return families;
}

ClassChoice choose_class(const ClassFamily& family, const ZoneSizing& sizing,
                         const Wording& wording) {
  ClassChoice choice;
  for (const auto* candidate : family.classes) {
    auto standing = standing_of(*candidate, sizing, wording);
    if (standing.why_not.empty()) {
      choice.smallest = candidate;
      choice.margin = standing.margin;
      break;
    }
    choice.why_next_smaller_fails = std::move(standing.why_not);
  }
  return choice;
}

Finding families_finding(const Site& site, const ZoneSizing& sizing, const Wording& wording) {
  const auto& zone = *sizing.zone;
  Finding finding;
  finding.topic = Topic::rock_size;
  finding.about.zone = zone.id;
  finding.id = "families." + zone.id;
  finding.title = fmt::format("Classes of every family for {}", zone.name);
  std::size_t holding = 0;
  const auto families = class_families(site);
  for (const auto& family : families) {
    const auto choice = choose_class(family, sizing, wording);
    finding.reasons.push_back(family_line(family, choice, wording));
    if (choice.smallest == nullptr) continue;
    ++holding;
    finding.sources.push_back(choice.smallest->source);
    finding.steps.given_rock("D50",
                             fmt::format("nominal, of {} ({})", choice.smallest->name, family.name),
                             choice.smallest->nominal_d50, choice.smallest->source.sentence());
    finding.steps.computed("margin", "of " + choice.smallest->name + " under the zone's policy",
                           "size of the class / size asked for", measure(choice.margin));
    finding.values.push_back(
        {choice.smallest->id, "D50",
         fmt::format("{}: {}, nominal median size", family.name, choice.smallest->name),
         measure(choice.smallest->nominal_d50), LengthUse::rock});
  }
  finding.outcome = holding > 0 ? Outcome::meets : Outcome::falls_short;
  finding.sentence =
      fmt::format("{} of {} families have a class that holds here.", holding, families.size());
  finding.next = holding > 0 ? "Specify a class that the quarries at hand make."
                             : "No published class is enough: change the lining or the water.";
  finding.cautions.push_back(
      "Families differ in what size and percent mean; a class is only as good as the way it is "
      "tested.");
  return finding;
}

}  // namespace proofstone
