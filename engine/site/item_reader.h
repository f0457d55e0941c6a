#pragma once

#include <fmt/format.h>

#include <map>
#include <optional>
#include <string>
#include <utility>

#include "engine/json/field_reader.h"

namespace proofstone {

/// Whether `text` can name an item of the document: 1 to 64 of small letters, digits, hyphen.
bool is_item_id(const std::string& text);

/// Problems that an engine type names by its own rows ("point 4"), located in the document.
void add_located(Problems& problems, const Problems& more, const std::string& pointer);

/// Something kept in a file beside the document that was not supplied.
bool is_unread_file(FieldReader& reader, const std::string& field, const nlohmann::json& value);

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
    if (!is_item_id(id)) {
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

}  // namespace proofstone
