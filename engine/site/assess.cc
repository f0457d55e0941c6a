#include "engine/site/assess.h"

#include <fmt/format.h>

#include <algorithm>

#include "engine/finding/outcome_order.h"
#include "engine/site/compared_rock.h"
#include "engine/site/conflict_findings.h"
#include "engine/site/counted_so_far.h"
#include "engine/site/extents_in_zone.h"
#include "engine/site/frequent_water.h"
#include "engine/site/headline.h"
#include "engine/site/lining_of_zone.h"
#include "engine/site/loads_within_limits.h"
#include "engine/site/look_findings.h"
#include "engine/site/lot_evidence.h"
#include "engine/site/lot_on_filter.h"
#include "engine/site/lots_in_zones.h"
#include "engine/site/method_sizes.h"
#include "engine/site/placed_layer.h"
#include "engine/site/placing_findings.h"
#include "engine/site/profile_picture_of.h"
#include "engine/site/quantities.h"
#include "engine/site/reach_water.h"
#include "engine/site/remedies.h"
#include "engine/site/rock_as_placed.h"
#include "engine/site/rock_in_zone.h"
#include "engine/site/shore_toe.h"
#include "engine/site/site_pictures.h"
#include "engine/site/soil_findings.h"
#include "engine/site/submittal_review.h"
#include "engine/site/supply_findings.h"
#include "engine/site/top_of_rock.h"
#include "engine/site/unasked_checks.h"
#include "engine/site/zone_chance.h"
#include "engine/site/zone_cover_findings.h"
#include "engine/site/zone_filter_findings.h"
#include "engine/site/zone_kind_findings.h"
#include "engine/site/zone_mix.h"
#include "engine/site/zone_roughness.h"
#include "engine/site/zone_sizing.h"
#include "engine/site/zone_toe.h"
#include "engine/site/zone_transitions.h"

namespace proofstone {
namespace {

/// A zone with everything computed for it; pointers between the parts stay valid because the work
/// is kept in one place until the findings are written.
struct ZoneWork {
  const Zone* zone = nullptr;
  std::vector<ZoneWater> water;
  ZoneSizing sizing;
};

template <class Item>
void move_into(std::vector<Item>& all, std::vector<Item>&& more) {
  std::move(more.begin(), more.end(), std::back_inserter(all));
}

void push_if(std::vector<Finding>& all, std::optional<Finding>&& one) {
  if (one) all.push_back(std::move(*one));
}

void add_plans(const Site& site, const std::vector<ZoneWork>& work, const Wording& wording,
               Findings& findings) {
  std::vector<ZoneInPlan> zones;
  zones.reserve(work.size());
  for (const ZoneWork& one : work) zones.push_back({one.zone, &one.water});
  for (const auto& [id, centreline] : site.centrelines) {
    auto picture = plan_picture(centreline, zones, wording);
    if (picture) findings.plan_pictures.push_back(std::move(*picture));
  }
}

bool has_zone(const Site& site, const std::string& section) {
  return std::any_of(site.zones.begin(), site.zones.end(),
                     [&section](const auto& zone) { return zone.second.section == section; });
}

void add_sections_alone(const Site& site, Findings& findings) {
  for (const auto& [id, section] : site.sections) {
    if (!has_zone(site, id)) findings.section_pictures.push_back(section_alone(section));
  }
}

void add_quantities(const Site& site, const std::vector<ZoneWork>& work, Findings& findings) {
  std::vector<WateredZone> zones;
  zones.reserve(work.size());
  for (const ZoneWork& one : work) zones.push_back({one.zone, &one.water});
  findings.quantities = quantity_table(site, zones);
  move_into(findings.findings, quantity_findings(findings.quantities, findings.units));
}

Finding nothing_to_size(const std::string& what, const std::string& title,
                        const std::string& next) {
  Finding finding;
  finding.topic = Topic::document;
  finding.id = "document." + what;
  finding.title = title;
  finding.outcome = Outcome::not_yet_known;
  finding.sentence = fmt::format("The site has no {}.", what);
  finding.next = next;
  return finding;
}

void note_what_is_missing(const Site& site, Findings& findings) {
  const bool has_design =
      std::any_of(site.flow_cases.begin(), site.flow_cases.end(),
                  [](const auto& entry) { return entry.second.purpose == FlowPurpose::design; });
  if (!has_design) {
    findings.findings.push_back(
        nothing_to_size("design flow case", "The flood to design for",
                        "Add the flood that the rock must hold, with its discharge."));
  }
  if (site.zones.empty()) {
    findings.findings.push_back(
        nothing_to_size("zone", "The parts of the works",
                        "Add a zone: a section, a bank or bed, a class and a layer."));
  }
}

/// What the looks at a lot say of its rock.
void add_looks(const Site& site, LotEvidence& evidence, const Wording& wording,
               Findings& findings) {
  move_into(findings.findings, std::move(evidence.findings));
  move_into(findings.findings, look_findings(site, *evidence.lot, wording));
  auto counted = counted_so_far(site, evidence, wording);
  move_into(findings.findings, std::move(counted.findings));
  if (counted.picture) findings.sequential_counts.push_back(std::move(*counted.picture));
}

/// The design of a zone, from its water to its typical section.
void add_zone(const Site& site, ZoneWork& one, const Wording& wording, Findings& findings) {
  const Zone& zone = *one.zone;
  auto& all = findings.findings;
  for (auto& at : one.water) all.push_back(std::move(at.finding));
  if (!zone.section.empty()) {
    const auto& section = site.sections.at(zone.section);
    push_if(all, frequent_water(zone, section, one.water, wording));
    push_if(all, top_of_rock(zone, section, one.water, wording));
  }
  move_into(all, std::move(one.sizing.findings));
  move_into(all, roughness_findings(site, one.sizing, one.water, wording));
  move_into(all, toe_findings(zone, one.water, wording));
  move_into(all, shore_toe_findings(zone, one.sizing, one.water, wording));
  move_into(all, filter_findings(site, zone, wording));
  if (auto picture = filter_picture(site, zone)) {
    findings.filter_pictures.push_back(std::move(*picture));
  }
  auto mix = mix_in_zone(site, zone, wording);
  move_into(all, std::move(mix.findings));
  if (mix.picture) findings.mix_pictures.push_back(std::move(*mix.picture));
  push_if(all, extents_finding(zone, one.water, wording));
  if (!one.sizing.asked.empty()) {
    findings.method_sizes_pictures.push_back(method_sizes_picture(one.sizing));
  }
  move_into(all, placed_layer_findings(site, zone, wording));
  auto placing = placing_of(site, zone, wording);
  move_into(all, placing_findings(placing, wording));
  findings.placing.push_back(placing_record(placing, wording));
  move_into(all, chance_findings(zone, one.sizing, one.water, wording));
  move_into(all, lining_findings(site, zone, one.water, wording));
  auto typical = typical_section(site, zone, one.water, one.sizing, wording);
  if (typical) findings.typical_sections.push_back(std::move(*typical));
  auto plan = plan_view(site, zone, one.sizing, wording);
  if (plan) findings.typical_sections.push_back(std::move(*plan));
  auto keys = end_key_section(site, zone, one.water, one.sizing, wording);
  if (keys) findings.typical_sections.push_back(std::move(*keys));
  if (!zone.section.empty()) {
    findings.section_pictures.push_back(section_picture(site, zone, one.water, one.sizing));
  }
}

/// What is known of a lot, and what its rock means for the zones it is for.
void add_lot(const Site& site, LotEvidence& evidence, const std::vector<ZoneWork>& work,
             const std::vector<LotEvidence>& lots, const Wording& wording,
             std::vector<LotInZone>& judged, Findings& findings) {
  const Lot& lot = *evidence.lot;
  add_looks(site, evidence, wording, findings);
  std::vector<RockInZone> results;
  results.reserve(lot.zones.size());
  for (const auto& one : work) {
    if (std::find(lot.zones.begin(), lot.zones.end(), one.zone->id) == lot.zones.end()) continue;
    results.push_back(rock_in_zone(site, one.sizing, evidence, wording));
    push_if(results.back().findings, lot_on_filter(site, *one.zone, evidence, wording));
    move_into(results.back().findings, rock_as_placed(site, *one.zone, evidence, wording));
  }
  std::vector<const RockInZone*> zones;
  for (auto& result : results) {
    move_into(findings.findings, std::move(result.findings));
    zones.push_back(&result);
    if (!lot.reference) judged.push_back({&lot, result.zone, result.outcome});
  }
  move_into(findings.findings, remedies_for(site, evidence, zones, wording));
  findings.gradation_pictures.push_back(gradation_picture(site, evidence, zones));
  findings.stones_pictures.push_back(stones_picture(site, evidence));
  auto compared = compare_rock(site, evidence, lots, wording);
  move_into(findings.findings, std::move(compared.findings));
  move_into(findings.gradation_pictures, std::move(compared.pictures));
  auto supply = supply_of(site, lot, wording);
  move_into(findings.findings, std::move(supply.findings));
  push_if(findings.findings, loads_within_limits(site, lot, wording));
  if (supply.run_chart) findings.run_charts.push_back(std::move(*supply.run_chart));
}

Findings begin_findings(const Site& site, UnitSystem units) {
  Findings findings;
  findings.site_name = site.name;
  findings.revision = site.revision;
  findings.units = units;
  findings.cautions = usual_cautions();
  return findings;
}

}  // namespace

std::vector<std::string> usual_cautions() {
  return {
      "Findings support, and never replace, the judgement of the licensed engineer responsible and "
      "the criteria that hold at the place.",
      "Rock can hurt: keep off piles and slopes that may slide, out from under loads and buckets, "
      "and out of fast or cold water.",
      "At dams and levees, nothing here settles their safety.",
  };
}

Findings assess(const Site& site, UnitSystem units) {
  const Wording wording(units);
  Findings findings = begin_findings(site, units);
  note_what_is_missing(site, findings);
  move_into(findings.findings, clock_findings(site));
  move_into(findings.findings, conflict_findings(site));

  auto reaches = water_in_reaches(site, wording);
  for (auto& water : reaches) findings.findings.push_back(std::move(water.finding));
  for (const auto& [id, reach] : site.reaches) {
    auto picture = profile_picture(site, reach, reaches);
    if (picture) findings.profile_pictures.push_back(std::move(*picture));
  }

  move_into(findings.findings, soil_findings(site, wording));

  std::vector<ZoneWork> work(site.zones.size());
  std::size_t index = 0;
  for (const auto& [id, zone] : site.zones) {
    auto& one = work[index++];
    one.zone = &zone;
    one.water = water_at_zone(site, zone, reaches, wording);
    one.sizing = size_zone(site, zone, one.water, wording);
    add_zone(site, one, wording, findings);
  }

  add_sections_alone(site, findings);
  move_into(findings.findings, transition_findings(site, wording));
  add_plans(site, work, wording, findings);

  std::vector<LotEvidence> lots;
  lots.reserve(site.lots.size());
  for (const auto& [id, lot] : site.lots) lots.push_back(weigh_lot(site, lot, wording));
  std::vector<LotInZone> judged;
  for (auto& evidence : lots) add_lot(site, evidence, work, lots, wording, judged, findings);
  for (const auto& [id, submittal] : site.submittals) {
    move_into(findings.findings, review_submittal(site, submittal, wording));
  }
  move_into(findings.findings, nonconformance_findings(site));
  move_into(findings.findings, unasked_check_findings(site));
  add_quantities(site, work, findings);
  push_if(findings.findings, lots_in_zones(site, judged, findings.quantities, wording));
  write_headline(findings);
  return findings;
}

Findings assess_lot(const Site& site, const std::string& lot, UnitSystem units) {
  const Wording wording(units);
  Findings findings = begin_findings(site, units);
  auto evidence = weigh_lot(site, site.lots.at(lot), wording);
  add_looks(site, evidence, wording, findings);
  findings.gradation_pictures.push_back(gradation_picture(site, evidence, {}));
  findings.stones_pictures.push_back(stones_picture(site, evidence));
  write_headline(findings);
  return findings;
}

}  // namespace proofstone
