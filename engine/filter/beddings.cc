#include "engine/filter/beddings.h"

#include <algorithm>
#include <stdexcept>

#include "engine/rock/embedded_catalog.h"

namespace proofstone {
namespace {

/// The data come with the engine and are tested with it, so a fault in them is a fault of ours.
std::vector<RockClass> read_catalog() {
  const auto& files = embedded_catalog();
  const auto file = std::find_if(files.begin(), files.end(), [](const EmbeddedFile& one) {
    return one.name == "beddings.json";
  });
  if (file == files.end()) throw std::logic_error("catalog/beddings.json is missing");
  auto beddings = read_rock_classes(file->text);
  if (!beddings) throw std::logic_error(beddings.problems().front().sentence());
  return std::move(*beddings);
}

}  // namespace

const std::vector<RockClass>& bedding_catalog() {
  static const std::vector<RockClass> catalog = read_catalog();
  return catalog;
}

const RockClass* find_bedding(std::string_view id) {
  const auto& catalog = bedding_catalog();
  const auto found = std::find_if(catalog.begin(), catalog.end(),
                                  [&](const RockClass& one) { return one.id == id; });
  return found == catalog.end() ? nullptr : &*found;
}

}  // namespace proofstone
