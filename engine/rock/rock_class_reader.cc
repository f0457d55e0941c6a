#include <nlohmann/json.hpp>
#include <set>
#include <utility>

#include "engine/json/field_reader.h"
#include "engine/json/strict_json.h"
#include "engine/rock/band_wording.h"
#include "engine/rock/rock_class.h"

namespace proofstone {
namespace {

using nlohmann::json;

std::string pointer_to(const FieldReader& reader, const std::string& field) {
  return reader.pointer() + "/" + field;
}

/// What the classes of one file share.
struct Family {
  std::string name;
  Source source;
  GradationBasis basis;
  std::optional<Density> rock_density;
  std::optional<double> thickness_in_d50;
  std::vector<std::string> notes;
};

std::vector<std::string> read_notes(FieldReader& reader) {
  std::vector<std::string> notes;
  const json* list = reader.optional_list("notes");
  if (!list) return notes;
  for (std::size_t i = 0; i < list->size(); ++i) {
    if ((*list)[i].is_string()) {
      notes.push_back((*list)[i].get<std::string>());
    } else {
      reader.report("not-a-text", "A text belongs here.", "notes/" + std::to_string(i), "a text");
    }
  }
  return notes;
}

Source read_source(const json& object, std::string pointer, Problems& problems) {
  FieldReader reader(object, std::move(pointer), problems);
  Source source;
  source.document = reader.required_text("document");
  source.place = reader.required_text("place");
  const auto standing = reader.required_text("standing");
  if (const auto known = standing_called(standing)) {
    source.standing = *known;
  } else if (!standing.empty()) {
    reader.report("unknown-word", "This standing is not known.", "standing",
                  "published, memory, computed, common practice");
  }
  reader.finish();
  return source;
}

GradationBasis read_basis(const json& object, std::string pointer, Problems& problems) {
  FieldReader reader(object, std::move(pointer), problems);
  const auto word = [](auto name_of, auto value) {
    return std::pair(std::string(name_of(value)), value);
  };
  GradationBasis basis;
  basis.size = reader.choice<SizeMeaning>(
      "size",
      {word(size_meaning_name, SizeMeaning::intermediate_axis),
       word(size_meaning_name, SizeMeaning::sphere), word(size_meaning_name, SizeMeaning::sieve)},
      std::nullopt);
  basis.percent = reader.choice<PercentOf>(
      "percent", {word(percent_of_name, PercentOf::mass), word(percent_of_name, PercentOf::count)},
      std::nullopt);
  reader.finish();
  return basis;
}

/// The largest stone, where the band says how large D100 may be.
std::optional<Length> largest_stone(const GradationBand& band) {
  for (const auto& condition : band.conditions()) {
    if (condition.sense == BandCondition::Sense::at_least && condition.percent >= 100) {
      return condition.size;
    }
  }
  return std::nullopt;
}

bool is_id(const std::string& text) {
  return !text.empty() &&
         text.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-") == std::string::npos;
}

/// The fields of a class but its id and what its family states.
std::optional<RockClass> read_class_body(FieldReader& reader, const Family& family,
                                         Problems& problems) {
  RockClass rock_class;
  rock_class.family = family.name;
  rock_class.thickness_in_d50 = family.thickness_in_d50;
  rock_class.name = reader.required_text("name");
  rock_class.nominal_d50 = reader.required_quantity<Length>("nominal_d50");
  const bool has_size = rock_class.nominal_d50.si() > 0;
  if (reader.has("nominal_d50") && !has_size) {
    reader.report("size-not-positive", "The nominal D50 is not above zero.", "nominal_d50",
                  "a size above zero");
  }
  if (const auto thickness = reader.optional_quantity<Length>("layer_thickness")) {
    if (!(thickness->si() > 0)) {
      reader.report("size-not-positive", "The layer has no thickness.", "layer_thickness",
                    "a thickness above zero");
    } else if (has_size) {
      rock_class.thickness_in_d50 = *thickness / rock_class.nominal_d50;
    }
  }
  rock_class.stated_sizes = read_stated_sizes(reader, problems);
  if (reader.has("mass_windows") || reader.has("mass_percent_windows")) {
    rock_class.mass_density = family.rock_density;
  }
  auto band = read_band_wording(reader, family.basis, family.rock_density, problems);
  if (!band) return std::nullopt;
  rock_class.largest_stone = largest_stone(*band);
  rock_class.band = std::move(*band);
  return rock_class;
}

std::optional<RockClass> read_class(const json& object, std::string pointer, const Family& family,
                                    Problems& problems) {
  FieldReader reader(object, std::move(pointer), problems);
  const auto id = reader.required_text("id");
  if (!id.empty() && !is_id(id)) {
    reader.report("not-an-id", "An id is a short word in small letters.", "id",
                  "small letters, digits and hyphens");
  }
  auto source = family.source;
  if (const json* own = reader.optional("source")) {
    source = read_source(*own, pointer_to(reader, "source"), problems);
  }
  auto notes = family.notes;
  for (auto& note : read_notes(reader)) notes.push_back(std::move(note));
  auto rock_class = read_class_body(reader, family, problems);
  reader.finish();
  if (!rock_class) return std::nullopt;
  rock_class->id = id;
  rock_class->source = std::move(source);
  rock_class->notes = std::move(notes);
  return rock_class;
}

Family read_family(FieldReader& reader, Problems& problems) {
  Family family;
  family.name = reader.required_text("family");
  if (const json* source = reader.required("source")) {
    family.source = read_source(*source, pointer_to(reader, "source"), problems);
  }
  if (const json* basis = reader.required("basis")) {
    family.basis = read_basis(*basis, pointer_to(reader, "basis"), problems);
  }
  family.rock_density = reader.optional_quantity<Density>("rock_density");
  family.thickness_in_d50 = read_plain_number(reader, "thickness_in_d50", 10);
  if (family.thickness_in_d50 && !(*family.thickness_in_d50 > 0)) {
    reader.report("not-a-number", "A layer has some thickness.", "thickness_in_d50",
                  "more than 0, at most 10");
  }
  family.notes = read_notes(reader);
  return family;
}

}  // namespace

std::optional<RockClass> read_own_rock_class(FieldReader& reader, const std::string& id,
                                             Problems& problems) {
  const Family family = read_family(reader, problems);
  auto rock_class = read_class_body(reader, family, problems);
  if (!rock_class) return std::nullopt;
  rock_class->id = id;
  rock_class->source = family.source;
  rock_class->notes = family.notes;
  return rock_class;
}

Expected<std::vector<RockClass>> read_rock_classes(std::string_view json_text) {
  const auto document = parse_strict_json(json_text);
  if (!document) return document.problems();
  Problems problems;
  FieldReader reader(*document, "", problems);
  const Family family = read_family(reader, problems);
  std::vector<RockClass> classes;
  std::set<std::string> ids;
  reader.required("classes");
  if (const json* list = reader.optional_list("classes")) {
    if (list->empty()) {
      reader.report("no-classes", "There are no classes.", "classes", "at least one class");
    }
    for (std::size_t i = 0; i < list->size(); ++i) {
      const auto pointer = "/classes/" + std::to_string(i);
      auto rock_class = read_class((*list)[i], pointer, family, problems);
      if (!rock_class) continue;
      if (!ids.insert(rock_class->id).second) {
        problems.push_back({"id-twice",
                            "Two classes have this id.",
                            {},
                            pointer + "/id",
                            "an id of its own for each class"});
      }
      classes.push_back(std::move(*rock_class));
    }
  }
  reader.finish();
  if (!problems.empty()) return problems;
  return classes;
}

}  // namespace proofstone
