#include "engine/site/revision.h"

#include <fmt/format.h>

#include <set>

#include "engine/json/field_reader.h"
#include "engine/json/utc_time.h"

namespace proofstone {
namespace {

constexpr int known_format = 1;

/// Takes the value out of `json`, which may be long.
Change read_change(nlohmann::json& json, const std::string& pointer, Problems& problems) {
  FieldReader reader(json, pointer, problems);
  Change change;
  if (reader.has("remove")) {
    change.action = Change::Action::remove;
    change.pointer = reader.required_text("remove");
  } else {
    change.pointer = reader.required_text("set");
    if (reader.required("to") != nullptr) change.value = std::move(json["to"]);
  }
  const std::string field = change.action == Change::Action::set ? "set" : "remove";
  if (!change.pointer.empty() && (change.pointer[0] != '/' || change.pointer.size() < 2)) {
    reader.report("bad-pointer", "This is not a JSON pointer.", field,
                  "a pointer such as \"/zones/outer-bank\"");
  }
  reader.finish();
  return change;
}

Revision read_revision(nlohmann::json& json, const std::string& pointer, Problems& problems) {
  FieldReader reader(json, pointer, problems);
  Revision revision;
  revision.id = reader.required_text("id");
  if (const auto* after = reader.optional_list("after")) {
    for (const auto& id : *after) {
      if (id.is_string()) {
        revision.after.push_back(id.get<std::string>());
      } else {
        reader.report("not-a-text", "The id of a revision belongs here.", "after", "a text");
      }
    }
  }
  revision.time = reader.required_text("time");
  if (!revision.time.empty() && !is_utc_time(revision.time)) {
    reader.report("bad-time", "This is not a time in UTC.", "time",
                  "a time such as \"2026-05-04T15:10:00Z\"");
  }
  revision.author = reader.required_text("author");
  revision.note = reader.optional_text("note");
  if (reader.required("changes")) {
    if (reader.optional_list("changes") != nullptr) {
      auto& changes = json["changes"];
      for (std::size_t i = 0; i < changes.size(); ++i) {
        revision.changes.push_back(
            read_change(changes[i], fmt::format("{}/changes/{}", pointer, i), problems));
      }
    }
  }
  reader.finish();
  return revision;
}

/// The object that holds the last step of `pointer`, or nullptr; `key` receives that step.
nlohmann::json* parent_of(nlohmann::json& state, const nlohmann::json::json_pointer& pointer) {
  nlohmann::json* at = &state;
  auto parent = pointer.parent_pointer();
  std::vector<std::string> keys;
  while (!parent.empty()) {
    keys.insert(keys.begin(), parent.back());
    parent.pop_back();
  }
  for (std::size_t depth = 0; depth < keys.size(); ++depth) {
    if (!at->is_object()) return nullptr;
    // Collections ("zones", "lots") come into being with their first member.
    if (depth == 0 && !at->contains(keys[0])) (*at)[keys[0]] = nlohmann::json::object();
    const auto found = at->find(keys[depth]);
    if (found == at->end()) return nullptr;
    at = &*found;
  }
  return at->is_object() ? at : nullptr;
}

void play(Change& change, nlohmann::json& state, const std::string& where, Problems& problems) {
  nlohmann::json::json_pointer pointer;
  try {
    pointer = nlohmann::json::json_pointer(change.pointer);
  } catch (const nlohmann::json::exception&) {
    problems.push_back({"bad-pointer", "This is not a JSON pointer.", "", where,
                        "a pointer such as \"/zones/outer-bank\""});
    return;
  }
  nlohmann::json* parent = parent_of(state, pointer);
  if (parent == nullptr) {
    problems.push_back(
        {"no-such-place",
         fmt::format("\"{}\" lies inside something that does not exist.", change.pointer), "",
         where, "the pointer of an item, or of a field of an item that exists"});
    return;
  }
  const std::string key = pointer.back();
  if (change.action == Change::Action::set) {
    (*parent)[key] = std::move(change.value);
  } else if (parent->erase(key) == 0) {
    problems.push_back({"no-such-place", fmt::format("\"{}\" is not there.", change.pointer), "",
                        where, "the pointer of something that exists"});
  }
}

}  // namespace

Expected<std::vector<Revision>> read_revisions(nlohmann::json document) {
  Problems problems;
  FieldReader reader(document, "", problems);
  std::vector<Revision> revisions;
  if (reader.is_object()) {
    const auto* mark = reader.required("proofstone");
    if (mark != nullptr && (!mark->is_string() || *mark != "site")) {
      reader.report("not-a-site", "This is not a site document.", "proofstone", "\"site\"");
    }
    const auto* format = reader.required("format");
    if (format != nullptr && (!format->is_number_integer() || *format != known_format)) {
      reader.report("unknown-format", "This version of the format is not known.", "format",
                    fmt::format("{}", known_format));
    }
    if (reader.required("revisions") != nullptr) {
      if (reader.optional_list("revisions") != nullptr) {
        auto& list = document["revisions"];
        for (std::size_t i = 0; i < list.size(); ++i) {
          revisions.push_back(read_revision(list[i], fmt::format("/revisions/{}", i), problems));
        }
        if (list.empty()) {
          reader.report("empty", "The document has no revision.", "revisions",
                        "at least one revision");
        }
      }
    }
    reader.finish();
  }
  if (!problems.empty()) return problems;
  return revisions;
}

Expected<nlohmann::json> fold(std::vector<Revision> revisions) {
  nlohmann::json state = nlohmann::json::object();
  Problems problems;
  std::set<std::string> seen;
  for (std::size_t i = 0; i < revisions.size(); ++i) {
    auto& revision = revisions[i];
    const auto where = fmt::format("/revisions/{}", i);
    for (const auto& id : revision.after) {
      if (!seen.contains(id)) {
        problems.push_back({"unknown-revision",
                            fmt::format("The revision \"{}\" does not stand before this one.", id),
                            "", where + "/after", "ids of earlier revisions"});
      }
    }
    if (!seen.insert(revision.id).second) {
      problems.push_back({"repeated-id",
                          fmt::format("The revision id \"{}\" stands twice.", revision.id), "",
                          where + "/id", "an id of its own for every revision"});
    }
    for (std::size_t k = 0; k < revision.changes.size(); ++k) {
      play(revision.changes[k], state, fmt::format("{}/changes/{}", where, k), problems);
    }
  }
  if (!problems.empty()) return problems;
  return state;
}

}  // namespace proofstone
