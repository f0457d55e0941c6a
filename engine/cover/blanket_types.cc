#include "engine/cover/blanket_types.h"

#include <fmt/format.h>

#include <algorithm>
#include <stdexcept>

#include "engine/json/field_reader.h"
#include "engine/json/strict_json.h"
#include "engine/rock/embedded_catalog.h"

namespace proofstone {
namespace {

Source read_source(FieldReader& type, Problems& problems) {
  Source source;
  const auto* json = type.required("source");
  if (json == nullptr) return source;
  FieldReader reader(*json, type.pointer() + "/source", problems);
  source.document = reader.required_text("document");
  source.place = reader.required_text("place");
  const auto standing = standing_called(reader.required_text("standing"));
  if (standing) {
    source.standing = *standing;
  } else {
    reader.report("unknown-word", "This standing is not known.", "standing",
                  "published, memory, computed, common practice");
  }
  reader.finish();
  return source;
}

BlanketType read_type(FieldReader& reader, Problems& problems) {
  BlanketType type;
  type.id = reader.required_text("id");
  type.name = reader.required_text("name");
  type.degrades = reader.has("months");
  if (type.degrades) {
    type.months = reader.required_positive<Dimensionless>("months", "A blanket lasts some time.");
  }
  type.steepest = angle_of(
      reader.required_positive<Slope>("steepest_slope", "A blanket is meant for a slope."));
  type.tabulated_shear =
      reader.required_positive<Stress>("permissible_shear", "A blanket bears some shear.");
  type.source = read_source(reader, problems);
  reader.finish();
  return type;
}

/// The data come with the engine and are tested with it, so a fault in them is a fault of ours.
std::vector<BlanketType> types_of_catalog() {
  for (const auto& file : embedded_catalog()) {
    if (file.name != "blankets.json") continue;
    auto types = read_blanket_types(file.text);
    if (!types) throw std::logic_error("blankets.json: " + types.problems().front().sentence());
    return *types;
  }
  throw std::logic_error("blankets.json is not in the catalog");
}

}  // namespace

Expected<std::vector<BlanketType>> read_blanket_types(std::string_view json_text) {
  const auto json = parse_strict_json(json_text);
  if (!json) return json.problems();
  Problems problems;
  FieldReader reader(*json, "", problems);
  std::vector<BlanketType> types;
  if (const auto* list = reader.optional_list("types")) {
    for (std::size_t i = 0; i < list->size(); ++i) {
      FieldReader one((*list)[i], fmt::format("/types/{}", i), problems);
      types.push_back(read_type(one, problems));
    }
  }
  reader.finish();
  if (!problems.empty()) return problems;
  return types;
}

const std::vector<BlanketType>& blanket_types() {
  static const std::vector<BlanketType> types = types_of_catalog();
  return types;
}

const BlanketType* find_blanket_type(std::string_view id) {
  const auto& types = blanket_types();
  const auto found = std::find_if(types.begin(), types.end(),
                                  [&](const BlanketType& type) { return type.id == id; });
  return found == types.end() ? nullptr : &*found;
}

}  // namespace proofstone
