#include <nlohmann/json.hpp>
#include <set>
#include <utility>

#include "engine/json/field_reader.h"
#include "engine/json/strict_json.h"
#include "engine/rock/rock_class.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// What the classes of one file share.
struct Family {
  std::string name;
  Source source;
  GradationBasis basis;
  std::optional<Density> rock_density;
  std::optional<double> thickness_in_d50;
  std::vector<std::string> notes;
};

std::string pointer_to(const FieldReader& reader, const std::string& field) {
  return reader.pointer() + "/" + field;
}

/// A plain number from zero to `at_most`.
std::optional<double> read_number(FieldReader& reader, const std::string& field, double at_most) {
  const json* value = reader.optional(field);
  if (!value) return std::nullopt;
  if (value->is_number() && value->get<double>() >= 0 && value->get<double>() <= at_most) {
    return value->get<double>();
  }
  reader.report("not-a-number", "A plain number belongs here.", field,
                "a number from 0 to " + significant(at_most, 4));
  return std::nullopt;
}

double read_percent(FieldReader& reader, const std::string& field) {
  if (!reader.required(field)) return 0;
  return read_number(reader, field, 100).value_or(0);
}

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

PercentWindow read_percent_window(FieldReader& reader) {
  PercentWindow window;
  window.size = reader.required_quantity<Length>("size");
  window.min_percent = read_percent(reader, "min_percent");
  window.max_percent = read_percent(reader, "max_percent");
  return window;
}

SizeWindow read_size_window(FieldReader& reader) {
  SizeWindow window;
  window.percent = read_percent(reader, "percent");
  window.min_size = reader.optional_quantity<Length>("min_size");
  window.max_size = reader.optional_quantity<Length>("max_size");
  return window;
}

MassWindow read_mass_window(FieldReader& reader) {
  MassWindow window;
  window.percent = read_percent(reader, "percent");
  window.min_mass = reader.optional_quantity<Mass>("min_mass");
  window.max_mass = reader.optional_quantity<Mass>("max_mass");
  return window;
}

template <class Window>
std::vector<Window> read_windows(FieldReader& reader, const std::string& field,
                                 Window (*read)(FieldReader&), Problems& problems) {
  std::vector<Window> windows;
  const json* list = reader.optional_list(field);
  if (!list) return windows;
  for (std::size_t i = 0; i < list->size(); ++i) {
    FieldReader window((*list)[i], pointer_to(reader, field) + "/" + std::to_string(i), problems);
    windows.push_back(read(window));
    window.finish();
  }
  return windows;
}

/// The band of a class, worded in one of three ways; absent when something is wrong with it.
std::optional<GradationBand> read_band(FieldReader& reader, const Family& family,
                                       Problems& problems) {
  const std::size_t problems_before = problems.size();
  const auto percent_windows =
      read_windows(reader, "percent_windows", read_percent_window, problems);
  const auto size_windows = read_windows(reader, "size_windows", read_size_window, problems);
  const auto mass_windows = read_windows(reader, "mass_windows", read_mass_window, problems);
  const int wordings = static_cast<int>(reader.has("percent_windows")) +
                       static_cast<int>(reader.has("size_windows")) +
                       static_cast<int>(reader.has("mass_windows"));
  if (reader.is_object() && wordings != 1) {
    problems.push_back({"one-band",
                        "A class states its band in exactly one way.",
                        {},
                        reader.pointer(),
                        "one of percent_windows, size_windows, mass_windows"});
  }
  if (reader.has("mass_windows") && !family.rock_density) {
    problems.push_back({"missing-field",
                        "Masses need the density of the rock.",
                        {},
                        pointer_to(reader, "mass_windows"),
                        "rock_density beside the classes"});
  }
  if (problems.size() > problems_before) return std::nullopt;

  std::string field = "size_windows";
  Expected<GradationBand> band = Problems{{"no-band", "There is no band.", {}, {}, {}}};
  if (reader.has("percent_windows")) {
    field = "percent_windows";
    band = GradationBand::from_percent_windows(percent_windows, family.basis);
  } else if (reader.has("mass_windows")) {
    field = "mass_windows";
    band = GradationBand::from_mass_windows(mass_windows, family.rock_density.value_or(Density{}),
                                            family.basis.percent);
  } else {
    band = GradationBand::from_size_windows(size_windows, family.basis);
  }
  if (band) return *band;
  for (auto& problem : located_under(band.problems(), pointer_to(reader, field))) {
    problems.push_back(std::move(problem));
  }
  return std::nullopt;
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

std::optional<RockClass> read_class(const json& object, std::string pointer, const Family& family,
                                    Problems& problems) {
  FieldReader reader(object, std::move(pointer), problems);
  RockClass rock_class;
  rock_class.family = family.name;
  rock_class.thickness_in_d50 = family.thickness_in_d50;
  rock_class.id = reader.required_text("id");
  if (!rock_class.id.empty() && !is_id(rock_class.id)) {
    reader.report("not-an-id", "An id is a short word in small letters.", "id",
                  "small letters, digits and hyphens");
  }
  rock_class.name = reader.required_text("name");
  rock_class.nominal_d50 = reader.required_quantity<Length>("nominal_d50");
  if (reader.has("nominal_d50") && !(rock_class.nominal_d50.si() > 0)) {
    reader.report("size-not-positive", "The nominal D50 is not above zero.", "nominal_d50",
                  "a size above zero");
  }
  rock_class.source = family.source;
  if (const json* source = reader.optional("source")) {
    rock_class.source = read_source(*source, pointer_to(reader, "source"), problems);
  }
  rock_class.notes = family.notes;
  for (auto& note : read_notes(reader)) rock_class.notes.push_back(std::move(note));
  auto band = read_band(reader, family, problems);
  reader.finish();
  if (!band) return std::nullopt;
  rock_class.largest_stone = largest_stone(*band);
  rock_class.band = std::move(*band);
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
  family.thickness_in_d50 = read_number(reader, "thickness_in_d50", 10);
  if (family.thickness_in_d50 && !(*family.thickness_in_d50 > 0)) {
    reader.report("not-a-number", "A layer has some thickness.", "thickness_in_d50",
                  "more than 0, at most 10");
  }
  family.notes = read_notes(reader);
  return family;
}

}  // namespace

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
