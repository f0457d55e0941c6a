#include <fmt/format.h>

#include <algorithm>

#include "engine/json/field_reader.h"
#include "engine/json/strict_json.h"
#include "engine/site/conflict_findings.h"
#include "engine/site/filter_reader.h"
#include "engine/site/fold.h"
#include "engine/site/item_reader.h"
#include "engine/site/kinds_reader.h"
#include "engine/site/loads_reader.h"
#include "engine/site/lot_reader.h"
#include "engine/site/mix_reader.h"
#include "engine/site/ordering_reader.h"
#include "engine/site/photo_look_reader.h"
#include "engine/site/placing_reader.h"
#include "engine/site/reach_reader.h"
#include "engine/site/rock_reader.h"
#include "engine/site/site.h"
#include "engine/site/submittal_reader.h"
#include "engine/site/water_reader.h"
#include "engine/site/zone_reader.h"

namespace proofstone {
namespace {

void add_all(Problems& problems, Problems more) {
  for (auto& problem : more) problems.push_back(std::move(problem));
}

/// A chance that lies between limits, where it is stated.
std::optional<double> read_chance(FieldReader& reader, const char* field, double least, double most,
                                  const char* sentence) {
  const auto chance = reader.optional_quantity<Dimensionless>(field);
  if (!chance) return std::nullopt;
  if (!(chance->number() >= least && chance->number() <= most)) {
    reader.report("implausible", sentence, field,
                  fmt::format("{:g} % to {:g} %", 100 * least, 100 * most));
  }
  return chance->number();
}

EvidencePolicy read_evidence(FieldReader& state, Problems& problems) {
  EvidencePolicy policy;
  const auto* json = state.optional("evidence");
  if (json == nullptr) return policy;
  FieldReader reader(*json, "/evidence", problems);
  const auto confidence = read_chance(reader, "confidence", 0.5, 0.999,
                                      "A confidence lies between a coin's throw and certainty.");
  policy.confidence = confidence.value_or(policy.confidence);
  constexpr const char* no_risk = "A risk lies between certainty and a coin's throw.";
  policy.owners_risk = read_chance(reader, "owners_risk", 0.001, 0.49, no_risk);
  policy.producers_risk = read_chance(reader, "producers_risk", 0.001, 0.49, no_risk);
  const auto good_by =
      read_chance(reader, "good_by", 0.01, 0.4, "Rock is not called good by so much of its mass.");
  policy.good_by = good_by.value_or(policy.good_by);
  policy.good_by_stated = good_by.has_value();
  policy.photo_calibrations = read_photo_calibrations(reader, problems);
  reader.finish();
  return policy;
}

/// One item points at another by id.
template <class Item>
void check_reference(const std::map<std::string, Item>& items, const std::string& id,
                     const std::string& pointer, std::string_view kind, Problems& problems) {
  if (items.contains(id)) return;
  std::string allowed;
  for (const auto& [known, item] : items) allowed += (allowed.empty() ? "" : ", ") + known;
  problems.push_back({"no-such-item", fmt::format("No {} is called \"{}\".", kind, id), "", pointer,
                      allowed.empty() ? fmt::format("there is no {} yet", kind) : allowed});
}

void check_class(const Site& site, const std::string& id, const std::string& pointer,
                 Problems& problems) {
  if (find_class(site, id) != nullptr) return;
  std::string allowed;
  for (const auto& [own, rock_class] : site.classes) {
    allowed += (allowed.empty() ? "" : ", ") + own;
  }
  for (const auto& known : class_catalog()) allowed += (allowed.empty() ? "" : ", ") + known.id;
  problems.push_back(
      {"no-such-class", fmt::format("No class is called \"{}\".", id), "", pointer, allowed});
}

Problems check_references(const Site& site) {
  Problems problems;
  for (const auto& [id, zone] : site.zones) {
    const std::string at = "/zones/" + id;
    if (!zone.section.empty() || in_stream(zone.place)) {
      check_reference(site.sections, zone.section, at + "/section", "section", problems);
    }
    for (const auto& [flow_case, water] : zone.water) {
      check_reference(site.flow_cases, flow_case, at + "/water/" + flow_case, "flow case",
                      problems);
    }
    if (zone.along) {
      check_reference(site.centrelines, zone.along->centreline, at + "/along/centreline",
                      "centreline", problems);
    }
    check_reference(site.sources, zone.source, at + "/source", "source", problems);
    check_class(site, zone.rock_class, at + "/class", problems);
    add_all(problems, filter_reference_problems(site, zone));
    add_all(problems, level_reference_problems(site, zone));
  }
  for (const auto& [id, lot] : site.lots) {
    const std::string at = "/lots/" + id;
    check_reference(site.sources, lot.source, at + "/source", "source", problems);
    check_class(site, lot.rock_class, at + "/class", problems);
    for (const auto& zone : lot.zones) {
      check_reference(site.zones, zone, at + "/zones", "zone", problems);
    }
  }
  for (const auto& [id, submittal] : site.submittals) {
    const std::string at = "/submittals/" + id;
    check_reference(site.sources, submittal.source, at + "/source", "source", problems);
    check_class(site, submittal.rock_class, at + "/class", problems);
  }
  if (site.prices) {
    for (const auto& [id, price] : site.prices->classes) {
      check_class(site, id, "/prices/classes/" + id, problems);
    }
  }
  for (const auto& [id, look] : site.looks) {
    check_reference(site.lots, look.lot, "/looks/" + id + "/lot", "lot", problems);
    if (look.load.empty()) continue;
    check_reference(site.loads, look.load, "/looks/" + id + "/load", "load", problems);
  }
  for (const auto& [id, load] : site.loads) {
    check_reference(site.lots, load.lot, "/loads/" + id + "/lot", "lot", problems);
    if (load.source.empty()) continue;
    check_reference(site.sources, load.source, "/loads/" + id + "/source", "source", problems);
  }
  for (const auto& [id, survey] : site.layer_surveys) {
    check_reference(site.zones, survey.zone, "/layer_surveys/" + id + "/zone", "zone", problems);
  }
  return problems;
}

}  // namespace

const RockClass* find_class(const Site& site, const std::string& id) {
  const auto own = site.classes.find(id);
  return own != site.classes.end() ? &own->second : find_rock_class(id);
}

Expected<Site> read_site(std::string_view json_text) {
  auto document = parse_strict_json(json_text);
  if (!document) return document.problems();
  return site_from(std::move(*document));
}

Expected<Site> site_from(nlohmann::json document) {
  auto revisions = read_revisions(std::move(document));
  if (!revisions) return revisions.problems();
  std::string recorded;
  for (const auto& revision : *revisions) recorded = std::max(recorded, revision.time);
  auto folded = fold(std::move(*revisions));
  if (!folded) return folded.problems();

  Site site;
  Problems problems;
  FieldReader reader(folded->state, "", problems);
  site.revision = folded->last;
  site.conflicts = in_words(folded->conflicts, folded->state);
  site.recorded = recorded;
  site.name = reader.required_text("name");
  site.note = reader.optional_text("note");
  site.flow_cases = collection<FlowCase>(
      reader, "flow_cases", problems,
      [](FieldReader& item, const std::string& id) { return read_flow_case(item, id); });
  site.sections = collection<SiteSection>(reader, "sections", problems,
                                          [&problems](FieldReader& item, const std::string& id) {
                                            return read_section(item, id, problems);
                                          });
  site.centrelines = collection<SiteCentreline>(
      reader, "centrelines", problems, [&problems](FieldReader& item, const std::string& id) {
        return read_centreline(item, id, problems);
      });
  site.reaches = collection<SiteReach>(reader, "reaches", problems,
                                       [&problems](FieldReader& item, const std::string& id) {
                                         return read_reach(item, id, problems);
                                       });
  site.sources = collection<RockSource>(
      reader, "sources", problems,
      [](FieldReader& item, const std::string& id) { return read_source(item, id); });
  site.soils = collection<Soil>(reader, "soils", problems,
                                [&problems](FieldReader& item, const std::string& id) {
                                  return read_soil(item, id, problems);
                                });
  site.classes = collection<RockClass>(reader, "classes", problems,
                                       [&problems](FieldReader& item, const std::string& id) {
                                         return read_own_rock_class(item, id, problems);
                                       });
  site.zones = collection<Zone>(reader, "zones", problems,
                                [&problems](FieldReader& item, const std::string& id) {
                                  return read_zone(item, id, problems);
                                });
  site.lots = collection<Lot>(reader, "lots", problems,
                              [&problems](FieldReader& item, const std::string& id) {
                                return read_lot(item, id, problems);
                              });
  site.looks = collection<Look>(reader, "looks", problems,
                                [&problems](FieldReader& item, const std::string& id) {
                                  return read_look(item, id, problems);
                                });
  site.loads = collection<Load>(
      reader, "loads", problems,
      [&](FieldReader& item, const std::string& id) { return read_load(item, id, problems); });
  site.layer_surveys = collection<LayerSurvey>(
      reader, "layer_surveys", problems, [&problems](FieldReader& item, const std::string& id) {
        return read_layer_survey(item, id, problems);
      });
  site.placing_walks = collection<PlacingWalk>(
      reader, "placing_walks", problems, [&problems](FieldReader& item, const std::string& id) {
        return read_placing_walk(item, id, problems);
      });
  site.nonconformances = collection<Nonconformance>(
      reader, "nonconformances", problems, [&problems](FieldReader& item, const std::string& id) {
        return read_nonconformance(item, id, problems);
      });
  site.placing_tolerances = read_placing_tolerances(reader, problems);
  site.materials = collection<Material>(reader, "materials", problems,
                                        [&problems](FieldReader& item, const std::string& id) {
                                          return read_material(item, id, problems);
                                        });
  site.mixes = collection<SiteMix>(reader, "mixes", problems,
                                   [&problems](FieldReader& item, const std::string& id) {
                                     return read_mix(item, id, problems);
                                   });
  site.evidence = read_evidence(reader, problems);
  site.ordering = read_ordering(reader, problems);
  site.prices = read_prices(reader, problems);
  site.requirements = read_requirements(reader, problems);
  site.submittals = collection<Submittal>(reader, "submittals", problems,
                                          [&problems](FieldReader& item, const std::string& id) {
                                            return read_submittal(item, id, problems);
                                          });
  reader.finish();
  // References are only judged when every item could be read; else each unread item would be
  // reported a second time by all that point at it.
  if (problems.empty()) {
    add_all(problems, check_references(site));
    add_all(problems, reach_reference_problems(site));
    add_all(problems, mix_reference_problems(site));
  }
  // Checks are made from the design, which must hold together first.
  if (problems.empty()) add_all(problems, placing_reference_problems(site));
  if (problems.empty()) add_all(problems, repeated_looks(site));
  if (!problems.empty()) return problems;
  return site;
}

}  // namespace proofstone
