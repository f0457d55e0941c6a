#include "engine/site/substituted_site.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/quantity/rounding.h"
#include "engine/site/assess.h"
#include "engine/site/class_choice.h"
#include "engine/site/compared_designs.h"
#include "engine/site/designed_mix.h"
#include "engine/site/filter_chain.h"
#include "engine/site/mended_filter.h"
#include "engine/site/weighted_size.h"
#include "engine/site/zone_layer.h"

namespace proofstone {
namespace {

template <class Items>
std::string ids_of(const Items& items) {
  std::string ids;
  for (const auto& [id, item] : items) ids += (ids.empty() ? "" : ", ") + id;
  return ids;
}

/// The zone and the mix that is made of its class take another.
void take_class(Site& site, Zone& zone, const std::string& rock_class) {
  const auto mix = site.mixes.find(zone.mix);
  if (mix != site.mixes.end() && mix->second.rock_class == zone.rock_class) {
    mix->second.rock_class = rock_class;
  }
  zone.rock_class = rock_class;
}

/// The class itself where it leaves `margin`, else the smallest of its family that does.
const RockClass* class_with(const Site& site, const ZoneSizing& sizing, double margin) {
  const auto enough = [&](const RockClass& candidate) {
    return leaves_no_less(margin_of(candidate, sizing).value_or(0), margin);
  };
  if (enough(*sizing.specified)) return sizing.specified;
  for (const auto& family : class_families(site)) {
    if (family.name != sizing.specified->family) continue;
    for (const auto* candidate : family.classes) {
      if (enough(*candidate)) return candidate;
    }
  }
  return nullptr;
}

}  // namespace

SizedSite::SizedSite(Site of, const std::string& id, const Wording& wording)
    : site(std::move(of)),
      zone(site.zones.at(id)),
      reaches(water_in_reaches(site, wording)),
      water(water_at_zone(site, zone, reaches, wording)),
      sizing(size_zone(site, zone, water, wording)),
      findings(assess(site, wording.units())) {}

Site site_of_zone_alone(const Site& site, const std::string& zone) {
  Site only = site;
  std::erase_if(only.zones, [&](const auto& entry) { return entry.first != zone; });
  std::erase_if(only.layer_surveys, [&](const auto& entry) { return entry.second.zone != zone; });
  only.zones.at(zone).uncertainty.clear();
  only.lots.clear();
  only.looks.clear();
  only.submittals.clear();
  only.loads.clear();
  only.placing_walks.clear();
  only.nonconformances.clear();
  return only;
}

Problems substitution_problems(const Site& site, const SubstituteRock& rock) {
  Problems problems;
  if (!site.zones.contains(rock.zone)) {
    problems.push_back({"no-such-item", fmt::format("No zone is called \"{}\".", rock.zone), "",
                        "/zone", ids_of(site.zones)});
  }
  if (!rock.source.empty() && !site.sources.contains(rock.source)) {
    problems.push_back({"no-such-item", fmt::format("No source is called \"{}\".", rock.source), "",
                        "/source", ids_of(site.sources)});
  }
  if (!rock.rock_class.empty() && find_class(site, rock.rock_class) == nullptr) {
    problems.push_back({"no-such-class", fmt::format("No class is called \"{}\".", rock.rock_class),
                        "", "/class", "an id that `proofstone classes` lists, or one of the site"});
  }
  if (rock.specific_gravity &&
      !(rock.specific_gravity->number() >= 1.8 && rock.specific_gravity->number() <= 3.6)) {
    problems.push_back({"implausible", "No rock has this specific gravity.", "",
                        "/specific_gravity", "1.8 to 3.6"});
  }
  if (rock.source.empty() && rock.rock_class.empty() && !rock.angularity &&
      !rock.specific_gravity) {
    problems.push_back({"missing-field", "Nothing is substituted.", "", "",
                        "source, class, angularity or specific_gravity"});
  }
  return problems;
}

Site with_other_rock(const Site& original, const SubstituteRock& rock,
                     std::vector<std::string>& notes) {
  Site other = original;
  auto& zone = other.zones.at(rock.zone);
  if (!rock.source.empty()) zone.source = rock.source;
  if (!rock.rock_class.empty()) take_class(other, zone, rock.rock_class);
  auto& source = other.sources.at(zone.source);
  if (rock.specific_gravity) source.rock.specific_gravity = *rock.specific_gravity;
  if (rock.angularity && *rock.angularity != source.rock.angularity) {
    source.rock.angularity = *rock.angularity;
    if (source.rock.angle_of_repose) {
      source.rock.angle_of_repose.reset();
      notes.emplace_back(
          "The stated angle of repose was of other stones and is left out: methods take their "
          "own.");
    }
  }
  if (!zone.mix.empty()) {
    notes.emplace_back(
        "The mix is taken with the voids that were stated for the rock specified: weigh those of "
        "the other rock.");
  }
  return other;
}

std::optional<double> margin_of(const RockClass& rock_class, const ZoneSizing& sizing) {
  if (sizing.zone->policy == GoverningPolicy::weighted) {
    const auto weighted = weigh_sizes(sizing, rock_class);
    return weighted ? std::optional<double>(weighted->margin) : std::nullopt;
  }
  std::optional<double> least;
  for (const auto& asked : sizing.asked) {
    if (!counts(*sizing.zone, asked)) continue;
    const double margin = class_margin(rock_class, asked).value_or(0);
    if (!least || margin < *least) least = margin;
  }
  return least;
}

bool leaves_no_less(double margin, double other) { return margin >= other * (1 - rounding); }

std::optional<Site> made_as_safe(const SizedSite& original, const SizedSite& offered) {
  const double wanted = margin_of(*original.sizing.specified, original.sizing).value_or(1);
  const auto* needed = class_with(offered.site, offered.sizing, wanted);
  if (needed == nullptr) return std::nullopt;
  Site safe = offered.site;
  auto& zone = safe.zones.at(offered.zone.id);
  take_class(safe, zone, needed->id);
  Steps not_shown;
  const auto least = least_layer(offered.sizing, *needed, not_shown);
  // A layer that is thin already is no thinner in proportion.
  if (least && zone.layer_thickness < least->least) zone.layer_thickness = least->least;
  return safe;
}

namespace {

/// Whether something of the zone is judged worse than with the original rock.
bool is_worse_than(const SizedSite& original, const SizedSite& other, const std::string& id) {
  const auto* before = original.findings.find(id);
  const auto* after = other.findings.find(id);
  return before != nullptr && after != nullptr && is_worse(after->outcome, before->outcome);
}

void mend_filter(const SizedSite& other, MendedSite& mended, const Wording& wording) {
  auto filter = mended_filter(other.site, other.zone, wording);
  if (!filter) return;
  mended.changes.push_back("the filter, from the soil up: " + filter->words);
  for (auto& material : filter->made) mended.site.materials.insert_or_assign(material.id, material);
  mended.site.zones.at(other.zone.id).filter = std::move(filter->filter);
  mended.filter = true;
}

/// Proportions found anew take the place of stated ones or of a recipe.
void mend_mix(const SizedSite& other, MendedSite& mended) {
  const auto prepared = prepare_mix(other.site, other.zone);
  if (!prepared) return;
  const auto made = designed_mix(other.site, other.zone, *prepared);
  if (!made) return;
  auto& mix = mended.site.mixes.at(other.zone.mix);
  mix.recipe.clear();
  mix.soil.clear();
  mix.rock_parts = made->mix.mix.rock_parts;
  mix.parts.clear();
  for (std::size_t i = 0; i < made->mix.mix.fills.size(); ++i) {
    if (made->mix.materials[i] == nullptr) return;  // of a recipe, not of the document
    mix.parts.push_back({made->mix.materials[i]->id, made->mix.mix.fill_parts[i]});
  }
  mended.changes.push_back("the mix: " + proportions_text(mended.site, other.zone.mix));
}

}  // namespace

std::optional<MendedSite> mended(const SizedSite& original, const SizedSite& other,
                                 const Wording& wording) {
  MendedSite mended{other.site, {}};
  if (is_worse_than(original, other, "filter." + other.zone.id)) {
    mend_filter(other, mended, wording);
  }
  const bool mix = is_worse_than(original, other, "mix." + other.zone.id) ||
                   is_worse_than(original, other, "mix-stability." + other.zone.id);
  if (mix) mend_mix(other, mended);
  if (mended.changes.empty()) return std::nullopt;
  return mended;
}

}  // namespace proofstone
