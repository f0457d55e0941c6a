#include "engine/site/substitution.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/finding/outcome_order.h"
#include "engine/site/compared_designs.h"
#include "engine/site/substituted_site.h"

namespace proofstone {
namespace {

/// "Filter under Outer bank falls short"
std::vector<std::string> named(const std::vector<const Finding*>& findings) {
  std::vector<std::string> names;
  for (const auto* finding : findings) {
    names.push_back(fmt::format("{} ({})", finding->title, outcome_phrase(finding->outcome)));
  }
  return names;
}

/// Class and layer are told by themselves; what is left of what got worse.
std::vector<const Finding*> beside_stones_and_layer(std::vector<const Finding*> findings) {
  std::erase_if(findings, [](const Finding* finding) {
    return finding->topic == Topic::rock_class || finding->topic == Topic::layer;
  });
  return findings;
}

/// The substitute made as safe, where that can be, with what was changed beside class and layer.
struct MadeSafe {
  const SizedSite* site = nullptr;
  const std::vector<std::string>& changes;
};

std::string why_not_mended(const std::vector<const Finding*>& left) {
  if (left.front()->topic == Topic::filter) {
    return " No bedding known here, no band made for the soil and no geotextile by the usual rules "
           "serves under this rock: take smaller rock, or have the filter designed for this very "
           "soil.";
  }
  return " " + left.front()->next;
}

std::string what_it_takes(const SizedSite& original, const MadeSafe& made, bool same_stones,
                          const Wording& wording) {
  const auto& safe = *made.site;
  const auto left = beside_stones_and_layer(made_worse(original, safe));
  if (same_stones && made.changes.empty() && left.empty()) {
    return "Nothing to change: the other rock leaves no less.";
  }
  std::string text = same_stones ? "Class and layer may stay."
                                 : fmt::format("For the same safety specify {} in a layer of {}.",
                                               safe.sizing.specified->name,
                                               wording.rock(safe.zone.layer_thickness));
  if (!made.changes.empty()) text += fmt::format(" Change {}.", listed(made.changes));
  if (!left.empty()) {
    text += fmt::format(" With that these are still worse than as specified: {}.{}",
                        listed(named(left)), why_not_mended(left));
  }
  return text;
}

void conclude(Finding& finding, const SizedSite& original, const SizedSite& offered,
              const MadeSafe& safe, const Wording& wording) {
  const auto before = margin_of(*original.sizing.specified, original.sizing);
  const auto after = margin_of(*offered.sizing.specified, offered.sizing);
  if (!before || !after) {
    finding.outcome = Outcome::ask_the_designer;
    finding.sentence = "No sizing method speaks for this zone within its published range.";
    finding.next = "Ask the designer which method governs here.";
    return;
  }
  finding.margin = Margin{*after, std::nullopt, std::nullopt};
  finding.steps.computed("m", "margin of the class as specified",
                         "size of the class / size asked for", measure(*before));
  finding.steps.computed("m'", "margin of the class with the other rock",
                         "size of the class / size asked for", measure(*after));
  finding.sentence = fmt::format("The margin of the stones goes from {} to {}.",
                                 margin_text(*before), margin_text(*after));
  const auto* layer = offered.findings.find("layer." + offered.zone.id);
  const bool layer_holds = layer != nullptr && layer->outcome == Outcome::meets;
  finding.outcome = *after >= 1 && layer_holds ? Outcome::meets : Outcome::falls_short;
  if (!layer_holds) finding.sentence += " The layer as drawn is too thin for its stones.";
  const auto worse = beside_stones_and_layer(made_worse(original, offered));
  if (!worse.empty()) {
    finding.sentence +=
        fmt::format(" Worse than with the rock specified: {}.", listed(named(worse)));
  }
  for (const auto* one : worse) {
    if (weight(one->outcome) > weight(finding.outcome)) finding.outcome = one->outcome;
  }
  if (safe.site == nullptr) {
    finding.next = "No class of this family leaves the original margin: keep the rock specified.";
    return;
  }
  const bool nothing_changed = leaves_no_less(*after, *before) && layer_holds;
  finding.next = what_it_takes(original, safe, nothing_changed, wording);
}

bool same_mix(const SiteMix& one, const SiteMix& other) {
  return one.rock_class == other.rock_class && one.recipe == other.recipe &&
         one.soil == other.soil && one.rock_parts == other.rock_parts &&
         std::equal(one.parts.begin(), one.parts.end(), other.parts.begin(), other.parts.end(),
                    [](const SiteMixPart& part, const SiteMixPart& as) {
                      return part.material == as.material && part.parts == as.parts;
                    });
}

/// Materials made for a filter take no id of the site's own; the layers name them by the new ones.
void add_made_materials(const Site& before, const Site& safe, Substitution::AsSafe& as_safe) {
  for (auto& layer : as_safe.zone.filter->layers) {
    auto* granular = std::get_if<GranularFilter>(&layer);
    if (granular == nullptr) continue;
    const auto made = safe.materials.find(granular->bedding);
    if (made == safe.materials.end() || made->first.rfind("made-filter-", 0) != 0) continue;
    auto material = made->second;
    for (int number = 2; before.materials.contains(material.id); ++number) {
      material.id = fmt::format("{}-{}", made->first, number);
    }
    granular->bedding = material.id;
    as_safe.made.push_back(std::move(material));
  }
}

Substitution::AsSafe as_safe_of(const Site& before, const SizedSite& safe, bool mended_filter) {
  Substitution::AsSafe as_safe{
      safe.zone, mended_filter, {}, std::nullopt, before.zones.at(safe.zone.id), std::nullopt};
  if (mended_filter) add_made_materials(before, safe.site, as_safe);
  const auto mix = safe.site.mixes.find(safe.zone.mix);
  if (mix == safe.site.mixes.end()) return as_safe;
  const auto& mix_before = before.mixes.at(safe.zone.mix);
  if (same_mix(mix_before, mix->second)) return as_safe;
  as_safe.mix = mix->second;
  as_safe.mix_before = mix_before;
  return as_safe;
}

}  // namespace

Expected<Substitution> study_substitution(const Site& site, const SubstituteRock& substitute,
                                          const Wording& wording) {
  auto problems = substitution_problems(site, substitute);
  if (!problems.empty()) return problems;
  Substitution study;
  auto& finding = study.finding;
  finding.topic = Topic::substitution;
  finding.about.zone = substitute.zone;
  finding.id = "substitution." + substitute.zone;
  const SizedSite original(site_of_zone_alone(site, substitute.zone), substitute.zone, wording);
  const SizedSite offered(with_other_rock(original.site, substitute, finding.reasons),
                          substitute.zone, wording);
  const auto safe_site = made_as_safe(original, offered);
  std::optional<SizedSite> safe;
  std::vector<std::string> changes;
  bool mended_filter = false;
  if (safe_site) safe.emplace(*safe_site, substitute.zone, wording);
  if (safe) {
    if (auto serving = mended(original, *safe, wording)) {
      changes = std::move(serving->changes);
      mended_filter = serving->filter;
      safe.emplace(std::move(serving->site), substitute.zone, wording);
    }
  }
  finding.title = fmt::format("Other rock for {}", original.zone.name);
  finding.about.rock_class = offered.sizing.specified->id;
  ComparedColumns columns{&original, &offered};
  study.columns = {"As specified", "Substitute as offered"};
  // Rock that no source of the document has is taken over once it has one.
  if (safe && !substitute.specific_gravity && !substitute.angularity) {
    study.as_safe = as_safe_of(site, *safe, mended_filter);
  }
  if (safe) {
    columns.push_back(&*safe);
    study.columns.emplace_back("Substitute made as safe");
  }
  compare_designs(study, columns, wording);
  conclude(finding, original, offered, {safe ? &*safe : nullptr, changes}, wording);
  if (offered.sizing.governing) {
    const auto& asked = offered.sizing.asked[*offered.sizing.governing];
    finding.sources = asked.method->description().sources;
    finding.steps.append(asked.evaluation.steps);
  }
  finding.cautions = {
      "Only what the sizing methods know of shape and density is compared. Durability is another "
      "question: see the submittal.",
      "Rounded stones interlock less and roll more readily under foot and in placing than the "
      "formulas show."};
  return study;
}

}  // namespace proofstone
