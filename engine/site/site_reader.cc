#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "engine/json/field_reader.h"
#include "engine/json/strict_json.h"
#include "engine/method/registry.h"
#include "engine/site/revision.h"
#include "engine/site/site.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {
namespace {

constexpr std::size_t longest_id = 64;

bool is_id(const std::string& text) {
  if (text.empty() || text.size() > longest_id) return false;
  return std::all_of(text.begin(), text.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
  });
}

void add_all(Problems& problems, Problems more) {
  for (auto& problem : more) problems.push_back(std::move(problem));
}

/// Problems that an engine type names by its own rows ("point 4"), located in the document.
void add_located(Problems& problems, const Problems& more, const std::string& pointer) {
  for (auto problem : more) {
    problem.what =
        problem.where.empty() ? problem.what : fmt::format("{}: {}", problem.where, problem.what);
    problem.where = pointer;
    problems.push_back(std::move(problem));
  }
}

/// Reads the members of a collection such as /zones with `read(reader, id)`.
template <class Item, class Read>
std::map<std::string, Item> collection(FieldReader& state, const std::string& name,
                                       Problems& problems, Read read) {
  std::map<std::string, Item> items;
  const auto* json = state.optional(name);
  if (json == nullptr) return items;
  if (!json->is_object()) {
    state.report("not-an-object", "Items under their ids belong here.", name, "{ \"id\": { … } }");
    return items;
  }
  for (const auto& [id, value] : json->items()) {
    const std::string pointer = "/" + name + "/" + id;
    if (!is_id(id)) {
      problems.push_back({"bad-id", "This is not an id.", "", pointer,
                          "1 to 64 of: small letters, digits, hyphen"});
      continue;
    }
    const auto before = problems.size();
    FieldReader reader(value, pointer, problems);
    std::optional<Item> item = read(reader, id);
    reader.finish();
    if (item && problems.size() == before) items.emplace(id, std::move(*item));
  }
  return items;
}

/// Something kept in a file beside the document that was not supplied.
bool is_unread_file(FieldReader& reader, const std::string& field, const nlohmann::json& value) {
  if (!value.is_object() || !value.contains("file")) return false;
  reader.report("file-not-read",
                fmt::format("The file {} was not read into the document.", value["file"].dump()),
                field, "supply the file beside the document");
  return true;
}

FlowCase read_flow_case(FieldReader& reader, const std::string& id) {
  FlowCase flow;
  flow.id = id;
  flow.name = reader.required_text("name");
  flow.purpose = reader.choice<FlowPurpose>("purpose",
                                            {{"design", FlowPurpose::design},
                                             {"frequent", FlowPurpose::frequent},
                                             {"base", FlowPurpose::base}},
                                            std::nullopt);
  flow.discharge =
      reader.required_positive<Discharge>("discharge", "A discharge is more than zero.");
  flow.return_period_years = reader.optional_quantity<Dimensionless>("return_period_years");
  return flow;
}

std::optional<Section> read_survey(FieldReader& reader, Problems& problems) {
  const auto* survey = reader.required("survey");
  if (survey == nullptr || is_unread_file(reader, "survey", *survey)) return std::nullopt;
  FieldReader table(*survey, reader.pointer() + "/survey", problems);
  std::vector<SectionPoint> points;
  const auto before = problems.size();
  if (table.required("points") != nullptr) {
    if (const auto* list = table.optional_list("points")) {
      points.reserve(list->size());
      for (std::size_t i = 0; i < list->size(); ++i) {
        FieldReader row((*list)[i], fmt::format("{}/points/{}", table.pointer(), i), problems);
        SectionPoint point;
        point.station = row.required_quantity<Length>("station");
        point.elevation = row.required_quantity<Length>("elevation");
        point.roughness = row.required_quantity<Dimensionless>("roughness");
        row.finish();
        points.push_back(point);
      }
    }
  }
  table.finish();
  if (problems.size() != before) return std::nullopt;
  auto section = Section::make(std::move(points));
  if (!section) {
    add_located(problems, section.problems(), table.pointer());
    return std::nullopt;
  }
  return std::move(*section);
}

std::optional<SiteSection> read_section(FieldReader& reader, const std::string& id,
                                        Problems& problems) {
  const auto name = reader.required_text("name");
  auto survey = read_survey(reader, problems);
  const auto left = reader.optional_quantity<Length>("left_bank");
  const auto right = reader.optional_quantity<Length>("right_bank");
  const auto slope = reader.required_positive<Slope>(
      "energy_slope", "Water runs downhill: the slope is more than zero.");
  const auto composite =
      reader.choice<CompositeRoughness>("composite_roughness",
                                        {{"horton", CompositeRoughness::horton},
                                         {"pavlovskii", CompositeRoughness::pavlovskii},
                                         {"lotter", CompositeRoughness::lotter}},
                                        CompositeRoughness::horton);
  if (!survey) return std::nullopt;
  const Length first = survey->points().front().station;
  const Length last = survey->points().back().station;
  const Length left_bank = left.value_or(first);
  const Length right_bank = right.value_or(last);
  if (left_bank < first || right_bank > last || left_bank >= right_bank) {
    reader.report("bad-banks",
                  "The bank stations do not lie inside the section, left before right.",
                  left ? "left_bank" : "right_bank", "stations of the survey");
  }
  return SiteSection{id, name, std::move(*survey), left_bank, right_bank, slope, composite};
}

RockSource read_source(FieldReader& reader, const std::string& id) {
  RockSource source;
  source.id = id;
  source.name = reader.required_text("name");
  source.specific_gravity_tests =
      reader.optional_quantities<Dimensionless>("specific_gravity_tests");
  const auto stated = reader.optional_quantity<Dimensionless>("specific_gravity");
  if (!source.specific_gravity_tests.empty()) {
    double sum = 0;
    for (const auto& test : source.specific_gravity_tests) sum += test.number();
    const auto count = static_cast<double>(source.specific_gravity_tests.size());
    source.rock.specific_gravity = Dimensionless::number(sum / count);
  } else if (stated) {
    source.rock.specific_gravity = *stated;
  } else {
    reader.report("missing-field", "The specific gravity of the rock is missing.",
                  "specific_gravity", "specific_gravity, or specific_gravity_tests");
  }
  const auto plausible = [](double value) { return value >= 1.8 && value <= 3.6; };
  bool all_plausible = plausible(source.rock.specific_gravity.number());
  for (const auto& test : source.specific_gravity_tests) {
    all_plausible = all_plausible && plausible(test.number());
  }
  if (!all_plausible) {
    reader.report(
        "implausible", "No rock has this specific gravity.",
        source.specific_gravity_tests.empty() ? "specific_gravity" : "specific_gravity_tests",
        "1.8 to 3.6 (protection rock lies between about 2.2 and 3.2)");
  }
  source.rock.angularity = reader.choice<Angularity>(
      "angularity", {{"angular", Angularity::angular}, {"rounded", Angularity::rounded}},
      std::nullopt);
  source.rock.angle_of_repose = reader.optional_quantity<Angle>("angle_of_repose");
  if (source.rock.angle_of_repose && (source.rock.angle_of_repose->degrees() < 25 ||
                                      source.rock.angle_of_repose->degrees() > 50)) {
    reader.report("implausible", "No loose rock rests at this angle.", "angle_of_repose",
                  "25° to 50°");
  }
  return source;
}

std::optional<Bend> read_bend(FieldReader& zone, Problems& problems) {
  const auto* json = zone.optional("bend");
  if (json == nullptr) return std::nullopt;
  FieldReader reader(*json, zone.pointer() + "/bend", problems);
  Bend bend;
  bend.side = reader.choice<BendSide>(
      "side", {{"outside", BendSide::outside}, {"inside", BendSide::inside}}, std::nullopt);
  bend.radius = reader.required_positive<Length>("radius", "A bend radius is more than zero.");
  reader.finish();
  return bend;
}

void read_policy(FieldReader& reader, Zone& zone) {
  const auto policy = reader.optional_text("governing", "envelope");
  if (policy == "envelope") return;
  zone.policy = GoverningPolicy::chosen;
  zone.chosen_method = policy;
  const auto& methods = sizing_methods();
  const bool known = std::any_of(methods.begin(), methods.end(), [&](const SizingMethod* method) {
    return method->description().id == policy;
  });
  if (known) return;
  std::string allowed = "\"envelope\"";
  for (const auto* method : methods) allowed += ", \"" + method->description().id + "\"";
  reader.report("unknown-word", "This is not a way to govern the size.", "governing", allowed);
}

void read_method_choices(FieldReader& reader, Zone& zone) {
  const auto* choices = reader.optional("method_choices");
  if (choices == nullptr) return;
  if (!choices->is_object()) {
    reader.report("not-an-object", "Choices under method ids belong here.", "method_choices",
                  "{ \"method id\": { \"input\": \"value\" } }");
    return;
  }
  for (const auto& [id, value] : choices->items()) {
    if (find_method(id) == nullptr) {
      reader.report("unknown-method", fmt::format("No method is called \"{}\".", id),
                    "method_choices/" + id, "the id of a sizing method");
    }
  }
  zone.method_choices = *choices;
}

Zone read_zone(FieldReader& reader, const std::string& id, Problems& problems) {
  Zone zone;
  zone.id = id;
  zone.name = reader.required_text("name");
  zone.section = reader.required_text("section");
  zone.place = reader.choice<ZonePlace>(
      "place", {{"bank", ZonePlace::bank}, {"bed", ZonePlace::bed}}, std::nullopt);
  if (zone.place == ZonePlace::bank) {
    zone.bank = reader.choice<BankSide>(
        "bank", {{"left", BankSide::left}, {"right", BankSide::right}}, std::nullopt);
  }
  zone.toe_station = reader.optional_quantity<Length>("toe_station");
  zone.top_station = reader.optional_quantity<Length>("top_station");
  zone.bend = read_bend(reader, problems);
  zone.channel_form = reader.choice<ChannelForm>(
      "channel_form",
      {{"natural", ChannelForm::natural}, {"trapezoidal", ChannelForm::trapezoidal}},
      ChannelForm::natural);
  zone.turbulence = reader.choice<Turbulence>(
      "turbulence", {{"low", Turbulence::low}, {"high", Turbulence::high}}, Turbulence::low);
  zone.rock_class = reader.required_text("class");
  zone.source = reader.required_text("source");
  zone.layer_thickness =
      reader.required_positive<Length>("layer_thickness", "A layer has a thickness.");
  zone.placement = reader.choice<Placement>(
      "placement", {{"dry", Placement::dry}, {"under water", Placement::under_water}},
      Placement::dry);
  read_policy(reader, zone);
  read_method_choices(reader, zone);
  return zone;
}

Lot read_lot(FieldReader& reader, const std::string& id) {
  Lot lot;
  lot.id = id;
  lot.name = reader.required_text("name");
  lot.source = reader.required_text("source");
  lot.rock_class = reader.required_text("class");
  if (reader.required("zones") != nullptr) {
    if (const auto* zones = reader.optional_list("zones")) {
      for (const auto& zone : *zones) {
        if (zone.is_string()) {
          lot.zones.push_back(zone.get<std::string>());
        } else {
          reader.report("not-a-text", "The id of a zone belongs here.", "zones", "a zone id");
        }
      }
    }
  }
  return lot;
}

StoneCount read_stone_count(FieldReader& look, Problems& problems) {
  StoneCount count;
  count.picking = look.choice<StonePicking>("picking",
                                            {{"grid", StonePicking::grid},
                                             {"line", StonePicking::line},
                                             {"area", StonePicking::area},
                                             {"whole", StonePicking::whole}},
                                            std::nullopt);
  const auto* stones = look.required("stones");
  if (stones == nullptr || is_unread_file(look, "stones", *stones)) return count;
  FieldReader table(*stones, look.pointer() + "/stones", problems);
  if (table.has("axes") == table.has("bins")) {
    look.report("one-of", "A count has measured axes or bins, one of the two.", "stones",
                "{\"axes\": […]} or {\"bins\": […]}");
  }
  count.intermediate_axes = table.optional_quantities<Length>("axes");
  if (const auto* bins = table.optional_list("bins")) {
    for (std::size_t i = 0; i < bins->size(); ++i) {
      FieldReader row((*bins)[i], fmt::format("{}/bins/{}", table.pointer(), i), problems);
      CountBin bin;
      bin.lower = row.optional_quantity<Length>("larger_than");
      bin.upper = row.required_quantity<Length>("not_larger_than");
      if (row.required("stones") != nullptr) {
        bin.stones = row.optional_integer("stones", 0, 1'000'000).value_or(0);
      }
      row.finish();
      count.bins.push_back(bin);
    }
  }
  table.finish();
  return count;
}

WeighedSample read_weighed_sample(FieldReader& look, Problems& problems) {
  WeighedSample sample;
  sample.size_meaning = look.choice<SizeMeaning>(
      "size_meaning",
      {{"intermediate axis", SizeMeaning::intermediate_axis}, {"sieve", SizeMeaning::sieve}},
      SizeMeaning::intermediate_axis);
  const auto* groups = look.required("groups");
  if (groups == nullptr || is_unread_file(look, "groups", *groups)) return sample;
  FieldReader table(*groups, look.pointer() + "/groups", problems);
  const auto* list = table.required("groups") != nullptr ? table.optional_list("groups") : nullptr;
  for (std::size_t i = 0; list != nullptr && i < list->size(); ++i) {
    FieldReader row((*list)[i], fmt::format("{}/groups/{}", table.pointer(), i), problems);
    WeighedGroup group;
    group.lower = row.optional_quantity<Length>("larger_than");
    group.upper = row.required_quantity<Length>("not_larger_than");
    group.mass = row.required_quantity<Mass>("mass");
    if (row.required("stones") != nullptr) {
      group.stones = row.optional_integer("stones", 0, 1'000'000).value_or(0);
    }
    row.finish();
    sample.groups.push_back(group);
  }
  table.finish();
  return sample;
}

enum class LookKind { stone_count, weighed_sample };

Look read_look(FieldReader& reader, const std::string& id, Problems& problems) {
  Look look;
  look.id = id;
  look.name = reader.required_text("name");
  look.lot = reader.required_text("lot");
  look.who = reader.optional_text("who");
  look.when = reader.optional_text("when");
  const auto kind = reader.choice<LookKind>(
      "kind",
      {{"stone count", LookKind::stone_count}, {"weighed sample", LookKind::weighed_sample}},
      std::nullopt);
  if (kind == LookKind::stone_count) {
    look.taken = read_stone_count(reader, problems);
  } else {
    look.taken = read_weighed_sample(reader, problems);
  }
  return look;
}

std::optional<Material> read_material(FieldReader& reader, const std::string& id,
                                      Problems& problems) {
  const auto name = reader.required_text("name");
  std::vector<GradationPoint> points;
  const auto before = problems.size();
  if (reader.required("gradation") != nullptr) {
    if (const auto* list = reader.optional_list("gradation")) {
      for (std::size_t i = 0; i < list->size(); ++i) {
        FieldReader row((*list)[i], fmt::format("{}/gradation/{}", reader.pointer(), i), problems);
        GradationPoint point;
        point.size = row.required_quantity<Length>("size");
        // A share is written "50 %" or "0.5"; a curve keeps it as percent.
        point.percent_smaller = 100 * row.required_quantity<Dimensionless>("smaller").number();
        row.finish();
        points.push_back(point);
      }
    }
  }
  if (problems.size() != before) return std::nullopt;
  auto gradation = Gradation::make(std::move(points), GradationBasis{});
  if (!gradation) {
    add_located(problems, gradation.problems(), reader.pointer() + "/gradation");
    return std::nullopt;
  }
  return Material{id, name, std::move(*gradation)};
}

EvidencePolicy read_evidence(FieldReader& state, Problems& problems) {
  EvidencePolicy policy;
  const auto* json = state.optional("evidence");
  if (json == nullptr) return policy;
  FieldReader reader(*json, "/evidence", problems);
  if (const auto confidence = reader.optional_quantity<Dimensionless>("confidence")) {
    policy.confidence = confidence->number();
    if (policy.confidence < 0.5 || policy.confidence > 0.999) {
      reader.report("implausible", "A confidence lies between a coin's throw and certainty.",
                    "confidence", "50 % to 99.9 %");
    }
  }
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

void check_class(const std::string& id, const std::string& pointer, Problems& problems) {
  if (find_rock_class(id) != nullptr) return;
  std::string allowed;
  for (const auto& known : class_catalog()) allowed += (allowed.empty() ? "" : ", ") + known.id;
  problems.push_back(
      {"no-such-class", fmt::format("No class is called \"{}\".", id), "", pointer, allowed});
}

Problems check_references(const Site& site) {
  Problems problems;
  for (const auto& [id, zone] : site.zones) {
    const std::string at = "/zones/" + id;
    check_reference(site.sections, zone.section, at + "/section", "section", problems);
    check_reference(site.sources, zone.source, at + "/source", "source", problems);
    check_class(zone.rock_class, at + "/class", problems);
  }
  for (const auto& [id, lot] : site.lots) {
    const std::string at = "/lots/" + id;
    check_reference(site.sources, lot.source, at + "/source", "source", problems);
    check_class(lot.rock_class, at + "/class", problems);
    for (const auto& zone : lot.zones) {
      check_reference(site.zones, zone, at + "/zones", "zone", problems);
    }
  }
  for (const auto& [id, look] : site.looks) {
    check_reference(site.lots, look.lot, "/looks/" + id + "/lot", "lot", problems);
  }
  return problems;
}

}  // namespace

Expected<Site> read_site(std::string_view json_text) {
  const auto document = parse_strict_json(json_text);
  if (!document) return document.problems();
  return site_from(*document);
}

Expected<Site> site_from(const nlohmann::json& document) {
  auto revisions = read_revisions(document);
  if (!revisions) return revisions.problems();
  const auto last_revision = revisions->back().id;
  const auto state = fold(std::move(*revisions));
  if (!state) return state.problems();

  Site site;
  Problems problems;
  FieldReader reader(*state, "", problems);
  site.revision = last_revision;
  site.name = reader.required_text("name");
  site.note = reader.optional_text("note");
  site.flow_cases = collection<FlowCase>(
      reader, "flow_cases", problems,
      [](FieldReader& item, const std::string& id) { return read_flow_case(item, id); });
  site.sections = collection<SiteSection>(reader, "sections", problems,
                                          [&problems](FieldReader& item, const std::string& id) {
                                            return read_section(item, id, problems);
                                          });
  site.sources = collection<RockSource>(
      reader, "sources", problems,
      [](FieldReader& item, const std::string& id) { return read_source(item, id); });
  site.zones = collection<Zone>(reader, "zones", problems,
                                [&problems](FieldReader& item, const std::string& id) {
                                  return read_zone(item, id, problems);
                                });
  site.lots =
      collection<Lot>(reader, "lots", problems,
                      [](FieldReader& item, const std::string& id) { return read_lot(item, id); });
  site.looks = collection<Look>(reader, "looks", problems,
                                [&problems](FieldReader& item, const std::string& id) {
                                  return read_look(item, id, problems);
                                });
  site.materials = collection<Material>(reader, "materials", problems,
                                        [&problems](FieldReader& item, const std::string& id) {
                                          return read_material(item, id, problems);
                                        });
  site.evidence = read_evidence(reader, problems);
  reader.finish();
  // References are only judged when every item could be read; else each unread item would be
  // reported a second time by all that point at it.
  if (problems.empty()) add_all(problems, check_references(site));
  if (!problems.empty()) return problems;
  return site;
}

}  // namespace proofstone
