#include "engine/site/reach_reader.h"

#include <fmt/format.h>

#include <utility>

namespace proofstone {
namespace {

/// A length for all three ways, or one for each.
ReachLengths read_lengths(FieldReader& reader, Problems& problems) {
  const auto* value = reader.required("to_next");
  if (value == nullptr) return {};
  const std::string why = "The next section lies further downstream.";
  if (!value->is_object()) {
    return ReachLengths::all(reader.required_positive<Length>("to_next", why));
  }
  FieldReader ways(*value, reader.pointer() + "/to_next", problems);
  ReachLengths lengths;
  lengths.left = ways.required_positive<Length>("left", why);
  lengths.channel = ways.required_positive<Length>("channel", why);
  lengths.right = ways.required_positive<Length>("right", why);
  ways.finish();
  return lengths;
}

Dimensionless read_share(FieldReader& reader, const std::string& field, Dimensionless otherwise) {
  const auto share = reader.optional_quantity<Dimensionless>(field).value_or(otherwise);
  if (!(share.number() >= 0 && share.number() <= 1)) {
    reader.report("loss-out-of-range", "A loss is a share of the change of the velocity head.",
                  field, "0 to 1");
  }
  return share;
}

std::vector<IneffectivePart> read_ineffective(FieldReader& reader, Problems& problems) {
  std::vector<IneffectivePart> parts;
  const auto* list = reader.optional_list("ineffective");
  if (list == nullptr) return parts;
  for (std::size_t i = 0; i < list->size(); ++i) {
    FieldReader row((*list)[i], fmt::format("{}/ineffective/{}", reader.pointer(), i), problems);
    IneffectivePart part;
    part.left = row.required_quantity<Length>("left");
    part.right = row.required_quantity<Length>("right");
    part.until = row.required_quantity<Length>("until");
    row.finish();
    parts.push_back(part);
  }
  return parts;
}

SiteReachSection read_place(FieldReader& reader, bool is_last, Problems& problems) {
  SiteReachSection place;
  place.section = reader.required_text("section");
  if (!is_last || reader.has("to_next")) place.to_next = read_lengths(reader, problems);
  place.losses.contraction = read_share(reader, "contraction", place.losses.contraction);
  place.losses.expansion = read_share(reader, "expansion", place.losses.expansion);
  place.ineffective = read_ineffective(reader, problems);
  return place;
}

std::vector<Boundary::RatedLevel> read_rating(FieldReader& reader, Problems& problems) {
  std::vector<Boundary::RatedLevel> rating;
  if (reader.required("rating") == nullptr) return rating;
  const auto* list = reader.optional_list("rating");
  if (list == nullptr) return rating;
  for (std::size_t i = 0; i < list->size(); ++i) {
    FieldReader row((*list)[i], fmt::format("{}/rating/{}", reader.pointer(), i), problems);
    Boundary::RatedLevel line;
    line.discharge = row.required_quantity<Discharge>("discharge");
    line.level = row.required_quantity<Length>("level");
    row.finish();
    rating.push_back(line);
  }
  return rating;
}

Boundary read_boundary(const nlohmann::json& json, const std::string& pointer, Problems& problems) {
  FieldReader reader(json, pointer, problems);
  Boundary boundary;
  boundary.kind = reader.choice<Boundary::Kind>("known",
                                                {{"slope", Boundary::Kind::normal_slope},
                                                 {"critical", Boundary::Kind::critical},
                                                 {"level", Boundary::Kind::known_level},
                                                 {"rating", Boundary::Kind::rating}},
                                                std::nullopt);
  switch (boundary.kind) {
    case Boundary::Kind::critical:
      break;
    case Boundary::Kind::normal_slope:
      boundary.slope = reader.required_positive<Slope>(
          "slope", "Without a fall there is no uniform flow: the slope is more than zero.");
      break;
    case Boundary::Kind::known_level:
      boundary.level = reader.required_quantity<Length>("level");
      break;
    case Boundary::Kind::rating:
      boundary.rating = read_rating(reader, problems);
      break;
  }
  reader.finish();
  return boundary;
}

void read_ends(FieldReader& reach_reader, SiteReach& reach, Problems& problems) {
  const auto* json = reach_reader.required("water");
  if (json == nullptr) return;
  if (!json->is_object()) {
    reach_reader.report("not-an-object", "Boundaries under the ids of flow cases belong here.",
                        "water", "{ \"flow case id\": { \"downstream\": { … } } }");
    return;
  }
  for (const auto& [flow_case, value] : json->items()) {
    FieldReader reader(value, reach_reader.pointer() + "/water/" + flow_case, problems);
    ReachEnds ends;
    if (const auto* downstream = reader.required("downstream")) {
      ends.downstream = read_boundary(*downstream, reader.pointer() + "/downstream", problems);
    }
    if (const auto* upstream = reader.optional("upstream")) {
      ends.upstream = read_boundary(*upstream, reader.pointer() + "/upstream", problems);
    }
    ends.regime = reader.choice<ProfileRegime>("regime",
                                               {{"mixed", ProfileRegime::mixed},
                                                {"tranquil", ProfileRegime::subcritical},
                                                {"rapid", ProfileRegime::supercritical}},
                                               ProfileRegime::mixed);
    if (ends.regime == ProfileRegime::supercritical && !ends.upstream) {
      reader.report("missing-field", "Rapid flow is computed downstream from the upper end.",
                    "upstream", "what is known of the water at the upper end");
    }
    reader.finish();
    reach.ends[flow_case] = std::move(ends);
  }
}

std::string known_ids(const auto& items) {
  std::string known;
  for (const auto& entry : items) known += (known.empty() ? "" : ", ") + entry.first;
  return known.empty() ? "there is none yet" : known;
}

}  // namespace

SiteReach read_reach(FieldReader& reader, const std::string& id, Problems& problems) {
  SiteReach reach;
  reach.id = id;
  reach.name = reader.required_text("name");
  if (reader.required("sections") != nullptr) {
    if (const auto* list = reader.optional_list("sections")) {
      for (std::size_t i = 0; i < list->size(); ++i) {
        FieldReader place((*list)[i], fmt::format("{}/sections/{}", reader.pointer(), i), problems);
        reach.sections.push_back(read_place(place, i + 1 == list->size(), problems));
        place.finish();
      }
      if (list->size() < 2) {
        reader.report("section-count", "A reach runs from one section to another.", "sections",
                      "at least 2 sections, from upstream to downstream");
      }
    }
  }
  reach.greatest_step = reader.optional_quantity<Length>("greatest_step");
  reach.friction =
      reader.choice<FrictionMean>("friction",
                                  {{"average-conveyance", FrictionMean::average_conveyance},
                                   {"arithmetic", FrictionMean::arithmetic},
                                   {"geometric", FrictionMean::geometric},
                                   {"harmonic", FrictionMean::harmonic}},
                                  FrictionMean::average_conveyance);
  read_ends(reader, reach, problems);
  return reach;
}

Problems reach_reference_problems(const Site& site) {
  Problems problems;
  std::map<std::string, std::string> taken;
  for (const auto& [id, reach] : site.reaches) {
    const std::string at = "/reaches/" + id;
    for (std::size_t i = 0; i < reach.sections.size(); ++i) {
      const std::string& section = reach.sections[i].section;
      const std::string where = fmt::format("{}/sections/{}/section", at, i);
      if (!site.sections.contains(section)) {
        problems.push_back({"no-such-item", fmt::format("No section is called \"{}\".", section),
                            "", where, known_ids(site.sections)});
      } else if (!taken.emplace(section, id).second) {
        problems.push_back({"section-twice",
                            fmt::format("The section \"{}\" already stands in reach \"{}\".",
                                        section, taken.at(section)),
                            "", where, "each section once, in one reach"});
      }
    }
    for (const auto& [flow_case, ends] : reach.ends) {
      if (site.flow_cases.contains(flow_case)) continue;
      problems.push_back({"no-such-item", fmt::format("No flow case is called \"{}\".", flow_case),
                          "", fmt::format("{}/water/{}", at, flow_case),
                          known_ids(site.flow_cases)});
    }
  }
  return problems;
}

}  // namespace proofstone
