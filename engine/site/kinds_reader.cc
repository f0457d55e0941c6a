#include "engine/site/kinds_reader.h"

#include <fmt/format.h>

#include "engine/site/item_reader.h"

namespace proofstone {
namespace {

std::vector<std::pair<std::string, RockKind>> kind_words() {
  std::vector<std::pair<std::string, RockKind>> words;
  for (const RockKind kind :
       {RockKind::bare, RockKind::soil_filled, RockKind::void_filled, RockKind::grouted}) {
    words.emplace_back(rock_kind_word(kind), kind);
  }
  return words;
}

bool is_open(const NamedLevel& level) { return level.flow_case.empty() && !level.elevation; }

void read_kind_list(FieldReader& zone_reader, Zone& zone, Problems& problems) {
  const auto* list = zone_reader.optional_list("kinds");
  if (list == nullptr) return;
  for (std::size_t i = 0; i < list->size(); ++i) {
    FieldReader reader((*list)[i], fmt::format("{}/kinds/{}", zone_reader.pointer(), i), problems);
    KindUpSlope one;
    one.kind = reader.choice<RockKind>("kind", kind_words(), std::nullopt);
    one.up_to = read_named_level(reader, "up_to", "top");
    one.reason = reader.optional_text("reason");
    if (is_open(one.up_to) && i + 1 < list->size()) {
      reader.report("above-the-top", "Nothing comes above the top of the zone.", "up_to",
                    "\"top\" in the last kind only");
    }
    reader.finish();
    zone.kinds.push_back(std::move(one));
  }
}

/// One of some words, or nothing where the field is absent.
template <class Enum>
std::optional<Enum> read_word(FieldReader& reader, const std::string& field,
                              const std::vector<std::pair<std::string, Enum>>& words) {
  if (!reader.has(field)) return std::nullopt;
  return reader.choice<Enum>(field, words, std::nullopt);
}

ZoneConditions read_conditions(FieldReader& reader) {
  ZoneConditions conditions;
  conditions.light = read_word<Light>(reader, "light",
                                      {{"sun", Light::sun},
                                       {"part shade", Light::part_shade},
                                       {"under a deck", Light::under_deck}});
  conditions.growing = read_word<Growing>(
      reader, "growing",
      {{"good", Growing::good}, {"poor", Growing::poor}, {"none", Growing::none}});
  conditions.access = read_word<Access>(reader, "access",
                                        {{"people kept off", Access::kept_off},
                                         {"people walk by", Access::walk_by},
                                         {"people walk on it", Access::walk_on}});
  conditions.extent = read_word<WorkExtent>(
      reader, "extent",
      {{"usual", WorkExtent::usual}, {"small and local", WorkExtent::small_and_local}});
  conditions.waves = read_word<WaveAction>(
      reader, "waves", {{"none", WaveAction::none}, {"some", WaveAction::some}});
  return conditions;
}

void check_level(const Site& site, const NamedLevel& level, const std::string& pointer,
                 Problems& problems) {
  if (level.flow_case.empty() || site.flow_cases.contains(level.flow_case)) return;
  std::string allowed;
  for (const auto& [id, flow_case] : site.flow_cases) allowed += id + ", ";
  problems.push_back({"no-such-item",
                      fmt::format("No flow case is called \"{}\".", level.flow_case), "", pointer,
                      allowed + "or an elevation such as \"112.4 ft\""});
}

}  // namespace

std::string_view rock_kind_word(RockKind kind) {
  switch (kind) {
    case RockKind::bare:
      return "bare";
    case RockKind::soil_filled:
      return "soil-filled";
    case RockKind::void_filled:
      return "void-filled";
    case RockKind::grouted:
      return "grouted";
  }
  return "bare";
}

bool is_filled(RockKind kind) {
  return kind == RockKind::soil_filled || kind == RockKind::void_filled;
}

NamedLevel read_named_level(FieldReader& reader, const std::string& field,
                            const std::string& end_word) {
  NamedLevel level;
  const auto text = reader.required_text(field);
  if (text.empty() || text == end_word) return level;
  if (is_item_id(text)) {
    level.flow_case = text;
  } else {
    level.elevation = reader.optional_quantity<Length>(field);
  }
  return level;
}

void read_kinds(FieldReader& zone_reader, Zone& zone, Problems& problems) {
  read_kind_list(zone_reader, zone, problems);
  if (const auto* json = zone_reader.optional("conditions")) {
    FieldReader reader(*json, zone_reader.pointer() + "/conditions", problems);
    zone.conditions = read_conditions(reader);
    reader.finish();
  }
  if (const auto* json = zone_reader.optional("top_key")) {
    FieldReader reader(*json, zone_reader.pointer() + "/top_key", problems);
    ZoneKey key;
    key.width = reader.required_positive<Length>("width", "A key has a width.");
    key.depth = reader.required_positive<Length>("depth", "A key has a depth.");
    reader.finish();
    zone.top_key = key;
  }
}

Problems level_reference_problems(const Site& site, const Zone& zone) {
  Problems problems;
  const std::string at = "/zones/" + zone.id;
  for (std::size_t i = 0; i < zone.kinds.size(); ++i) {
    check_level(site, zone.kinds[i].up_to, fmt::format("{}/kinds/{}/up_to", at, i), problems);
  }
  if (zone.cover) check_level(site, zone.cover->from, at + "/cover/from", problems);
  return problems;
}

}  // namespace proofstone
