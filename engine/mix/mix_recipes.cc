#include "engine/mix/mix_recipes.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <stdexcept>

#include "engine/json/field_reader.h"
#include "engine/json/strict_json.h"
#include "engine/rock/embedded_catalog.h"

namespace proofstone {
namespace {

using nlohmann::json;

Source read_source(FieldReader& recipe, Problems& problems) {
  Source source;
  const auto* given = recipe.required("source");
  if (given == nullptr) return source;
  FieldReader reader(*given, recipe.pointer() + "/source", problems);
  source.document = reader.required_text("document");
  source.place = reader.required_text("place");
  const auto standing = standing_called(reader.required_text("standing"));
  source.standing = standing.value_or(SourceStanding::memory);
  if (!standing) {
    reader.report("unknown-word", "This standing is not known.", "standing",
                  "published, memory, computed, common practice");
  }
  reader.finish();
  return source;
}

std::optional<MixFill> read_material(FieldReader& reader, Problems& problems) {
  MixFill fill{
      reader.required_text("name"),
      *Gradation::make({{Length::inches(1), 0}, {Length::inches(2), 100}}, GradationBasis{}),
      {},
      1.0};
  fill.porosity =
      reader.required_positive<Dimensionless>("porosity", "Grains have voids.").number();
  std::vector<GradationPoint> points;
  if (const auto* list = reader.optional_list("gradation")) {
    for (std::size_t i = 0; i < list->size(); ++i) {
      FieldReader row((*list)[i], fmt::format("{}/gradation/{}", reader.pointer(), i), problems);
      GradationPoint point;
      point.size = row.required_quantity<Length>("size");
      point.percent_smaller = 100 * row.required_quantity<Dimensionless>("smaller").number();
      row.finish();
      points.push_back(point);
    }
  }
  auto curve = Gradation::make(std::move(points), GradationBasis{});
  if (!curve) {
    reader.report("bad-gradation", curve.problems().front().sentence(), "gradation",
                  "sizes that rise with their percents");
    return std::nullopt;
  }
  fill.gradation = std::move(*curve);
  return fill;
}

using Materials = std::map<std::string, MixFill>;

Materials read_materials(FieldReader& catalog, Problems& problems) {
  Materials materials;
  const auto* list = catalog.optional_list("materials");
  if (list == nullptr) return materials;
  for (std::size_t i = 0; i < list->size(); ++i) {
    FieldReader reader((*list)[i], fmt::format("/materials/{}", i), problems);
    const auto id = reader.required_text("id");
    auto material = read_material(reader, problems);
    reader.finish();
    if (material) materials.emplace(id, std::move(*material));
  }
  return materials;
}

void read_parts(FieldReader& reader, const Materials& materials, PublishedRecipe& recipe,
                Problems& problems) {
  const auto* list = reader.optional_list("parts");
  if (list == nullptr) return;
  for (std::size_t i = 0; i < list->size(); ++i) {
    FieldReader part((*list)[i], fmt::format("{}/parts/{}", reader.pointer(), i), problems);
    const auto known = materials.find(part.required_text("material"));
    const auto parts = part.required_positive<Dimensionless>("parts", "A part is more than none.");
    if (known == materials.end()) {
      part.report("no-such-item", "The catalog has no such material.", "material",
                  "one of its materials");
    } else {
      recipe.fills.push_back(known->second);
      recipe.fill_parts.push_back(parts.number());
    }
    part.finish();
  }
}

std::vector<std::string> read_notes(FieldReader& reader) {
  std::vector<std::string> notes;
  const auto* list = reader.optional_list("notes");
  if (list == nullptr) return notes;
  for (const auto& note : *list) {
    if (note.is_string()) notes.push_back(note.get<std::string>());
  }
  return notes;
}

PublishedRecipe read_recipe(FieldReader& reader, const Materials& materials, Problems& problems) {
  PublishedRecipe recipe;
  recipe.id = reader.required_text("id");
  recipe.name = reader.required_text("name");
  recipe.kind = reader.choice<MixKind>(
      "kind", {{"soil-filled", MixKind::soil_filled}, {"void-filled", MixKind::void_filled}},
      std::nullopt);
  recipe.rock_from = reader.optional_quantity<Length>("rock_from");
  recipe.rock_to = reader.optional_quantity<Length>("rock_to");
  recipe.rock_parts =
      reader.required_positive<Dimensionless>("rock_parts", "A mix has rock.").number();
  if (const auto soil = reader.optional_quantity<Dimensionless>("soil_parts")) {
    recipe.soil_parts = soil->number();
  }
  read_parts(reader, materials, recipe, problems);
  const auto* unverified = reader.required("unverified");
  if (unverified != nullptr && unverified->is_boolean())
    recipe.unverified = unverified->get<bool>();
  recipe.source = read_source(reader, problems);
  recipe.notes = read_notes(reader);
  reader.finish();
  return recipe;
}

/// The data come with the engine and are tested with it, so a fault in them is a fault of ours.
std::vector<PublishedRecipe> recipes_of_catalog() {
  for (const auto& file : embedded_catalog()) {
    if (file.name != "mixes.json") continue;
    auto recipes = read_recipes(file.text);
    if (!recipes) throw std::logic_error("mixes.json: " + recipes.problems().front().sentence());
    return *recipes;
  }
  throw std::logic_error("mixes.json is not in the catalog");
}

}  // namespace

std::string_view mix_kind_word(MixKind kind) {
  return kind == MixKind::soil_filled ? "soil-filled" : "void-filled";
}

bool PublishedRecipe::serves(Length nominal_d50) const {
  return (!rock_from || nominal_d50 >= *rock_from) && (!rock_to || nominal_d50 < *rock_to);
}

Expected<std::vector<PublishedRecipe>> read_recipes(std::string_view json_text) {
  const auto document = parse_strict_json(json_text);
  if (!document) return document.problems();
  Problems problems;
  FieldReader reader(*document, "", problems);
  const auto materials = read_materials(reader, problems);
  std::vector<PublishedRecipe> recipes;
  if (const auto* list = reader.optional_list("recipes")) {
    for (std::size_t i = 0; i < list->size(); ++i) {
      FieldReader one((*list)[i], fmt::format("/recipes/{}", i), problems);
      recipes.push_back(read_recipe(one, materials, problems));
    }
  }
  reader.optional_list("notes");
  reader.finish();
  if (!problems.empty()) return problems;
  return recipes;
}

const std::vector<PublishedRecipe>& published_recipes() {
  static const std::vector<PublishedRecipe> recipes = recipes_of_catalog();
  return recipes;
}

const PublishedRecipe* find_recipe(std::string_view id) {
  const auto& recipes = published_recipes();
  const auto found = std::find_if(recipes.begin(), recipes.end(),
                                  [&](const PublishedRecipe& one) { return one.id == id; });
  return found == recipes.end() ? nullptr : &*found;
}

}  // namespace proofstone
