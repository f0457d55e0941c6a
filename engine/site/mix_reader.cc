#include "engine/site/mix_reader.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/site/item_reader.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// A pure number within limits, where it is stated.
std::optional<Dimensionless> number_within(FieldReader& reader, const char* field, double low,
                                           double high) {
  const auto value = reader.optional_quantity<Dimensionless>(field);
  if (value && !(value->number() >= low && value->number() <= high)) {
    reader.report("implausible", "No material on offer has this value.", field,
                  fmt::format("{:g} to {:g}", low, high));
  }
  return value;
}

std::vector<std::string> read_ids(FieldReader& reader, const char* field) {
  std::vector<std::string> ids;
  const auto* list = reader.optional_list(field);
  if (list == nullptr) return ids;
  for (std::size_t i = 0; i < list->size(); ++i) {
    const auto& value = (*list)[i];
    const auto place = fmt::format("{}/{}", field, i);
    if (!value.is_string()) {
      reader.report("not-a-text", "The id of a material belongs here.", place, "a text");
    } else if (std::find(ids.begin(), ids.end(), value.get<std::string>()) != ids.end()) {
      reader.report("repeated", "This material is named twice.", place, "each material once");
    } else {
      ids.push_back(value.get<std::string>());
    }
  }
  return ids;
}

std::vector<SiteMixPart> read_parts(FieldReader& mix, Problems& problems) {
  std::vector<SiteMixPart> parts;
  const auto* list = mix.optional_list("parts");
  if (list == nullptr) return parts;
  for (std::size_t i = 0; i < list->size(); ++i) {
    FieldReader reader((*list)[i], fmt::format("{}/parts/{}", mix.pointer(), i), problems);
    SiteMixPart part;
    part.material = reader.required_text("material");
    part.parts =
        reader.required_positive<Dimensionless>("parts", "A part is more than nothing.").number();
    const auto known = std::find_if(parts.begin(), parts.end(), [&](const SiteMixPart& one) {
      return one.material == part.material;
    });
    if (known != parts.end()) {
      reader.report("repeated", "This material is named twice.", "material", "each material once");
    }
    reader.finish();
    parts.push_back(std::move(part));
  }
  return parts;
}

void read_recipe(FieldReader& reader, SiteMix& mix) {
  mix.recipe = reader.optional_text("recipe");
  mix.soil = reader.optional_text("soil");
  if (mix.recipe.empty()) return;
  if (const auto* known = find_recipe(mix.recipe)) {
    if (known->soil_parts > 0 && mix.soil.empty()) {
      reader.report("missing-field", "The recipe takes soil of the place.", "soil",
                    "the id of a material");
    }
  } else {
    std::string allowed;
    for (const auto& one : published_recipes()) allowed += (allowed.empty() ? "" : ", ") + one.id;
    reader.report("no-such-item", fmt::format("No recipe is called \"{}\".", mix.recipe), "recipe",
                  allowed);
  }
  if (!mix.parts.empty()) {
    reader.report("one-of", "A mix has a recipe or parts of its own.", "parts", "one of the two");
  }
}

void check_material(const Site& site, const std::string& id, const std::string& pointer,
                    Problems& problems) {
  if (site.materials.contains(id)) return;
  std::string allowed;
  for (const auto& [known, material] : site.materials) {
    allowed += (allowed.empty() ? "" : ", ") + known;
  }
  problems.push_back({"no-such-item", fmt::format("No material is called \"{}\".", id), "", pointer,
                      allowed.empty() ? "there is no material yet" : allowed});
}

}  // namespace

std::optional<double> read_tonne_price(FieldReader& item, Problems& problems) {
  const auto* given = item.optional("price");
  if (given == nullptr) return std::nullopt;
  FieldReader reader(*given, item.pointer() + "/price", problems);
  const auto amount = reader.required_quantity<Dimensionless>("amount");
  const auto per = reader.choice<double>("per", {{"ton", Mass::short_tons(1).tonnes()}, {"t", 1.0}},
                                         std::nullopt);
  if (!(amount.number() >= 0 && amount.number() <= 1e6)) {
    reader.report("implausible", "No rock has this price.", "amount", "0 to 1000000");
  }
  reader.finish();
  return amount.number() / per;
}

MaterialState read_material_state(FieldReader& reader, Problems& problems) {
  MaterialState state;
  state.specific_gravity = number_within(reader, "specific_gravity", 0.5, 4);
  state.porosity = number_within(reader, "porosity", 0.1, 0.7);
  state.loose_over_bank = number_within(reader, "loose_over_bank", 1, 2);
  state.in_place_over_bank = number_within(reader, "in_place_over_bank", 0.5, 2);
  state.price_per_tonne = read_tonne_price(reader, problems);
  state.available = reader.optional_positive<Mass>("available");
  state.load = reader.optional_positive<Mass>("load");
  state.scalp_at = reader.optional_positive<Length>("scalp_at");
  return state;
}

SiteMix read_mix(FieldReader& reader, const std::string& id, Problems& problems) {
  SiteMix mix;
  mix.id = id;
  mix.name = reader.required_text("name");
  mix.kind = reader.choice<MixKind>(
      "kind", {{"soil-filled", MixKind::soil_filled}, {"void-filled", MixKind::void_filled}},
      std::nullopt);
  mix.rock_class = reader.optional_text("class");
  mix.rock_voids = number_within(reader, "rock_voids", 0.1, 0.7);
  mix.placing = reader.choice<MixPlacing>(
      "placing",
      {{"mixed before placing", MixPlacing::mixed}, {"washed in", MixPlacing::washed_in}},
      MixPlacing::mixed);
  mix.parts = read_parts(reader, problems);
  read_recipe(reader, mix);
  if (!mix.parts.empty()) {
    mix.rock_parts =
        reader.required_positive<Dimensionless>("rock_parts", "A mix has rock.").number();
  } else if (reader.has("rock_parts")) {
    reader.report("one-of", "Parts of rock without parts of fill make no mix.", "rock_parts",
                  "parts beside them, or neither");
  }
  mix.on_offer = read_ids(reader, "on_offer");
  mix.bucket = reader.optional_positive<Volume>("bucket");
  mix.most_buckets = reader.optional_integer("most_buckets", 2, 20).value_or(mix.most_buckets);
  return mix;
}

Problems mix_reference_problems(const Site& site) {
  Problems problems;
  for (const auto& [id, zone] : site.zones) {
    if (zone.mix.empty() || site.mixes.contains(zone.mix)) continue;
    std::string allowed;
    for (const auto& [known, mix] : site.mixes) allowed += (allowed.empty() ? "" : ", ") + known;
    problems.push_back({"no-such-item", fmt::format("No mix is called \"{}\".", zone.mix), "",
                        "/zones/" + id + "/mix",
                        allowed.empty() ? "there is no mix yet" : allowed});
  }
  for (const auto& [id, mix] : site.mixes) {
    const std::string at = "/mixes/" + id;
    for (std::size_t i = 0; i < mix.parts.size(); ++i) {
      check_material(site, mix.parts[i].material, fmt::format("{}/parts/{}/material", at, i),
                     problems);
    }
    for (std::size_t i = 0; i < mix.on_offer.size(); ++i) {
      check_material(site, mix.on_offer[i], fmt::format("{}/on_offer/{}", at, i), problems);
    }
    if (!mix.soil.empty()) check_material(site, mix.soil, at + "/soil", problems);
    if (!mix.rock_class.empty() && find_class(site, mix.rock_class) == nullptr) {
      problems.push_back({"no-such-class",
                          fmt::format("No class is called \"{}\".", mix.rock_class), "",
                          at + "/class", "an id that `proofstone classes` lists"});
    }
  }
  return problems;
}

}  // namespace proofstone
