#include "engine/site/lot_reader.h"

#include <fmt/format.h>

#include "engine/site/item_reader.h"
#include "engine/site/loads_reader.h"

namespace proofstone {
namespace {

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

}  // namespace

Lot read_lot(FieldReader& reader, const std::string& id, Problems& problems) {
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
  lot.supply = read_supply(reader, problems);
  return lot;
}

Look read_look(FieldReader& reader, const std::string& id, Problems& problems) {
  Look look;
  look.id = id;
  look.name = reader.required_text("name");
  look.lot = reader.required_text("lot");
  look.who = reader.optional_text("who");
  look.when = read_when(reader);
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

}  // namespace proofstone
