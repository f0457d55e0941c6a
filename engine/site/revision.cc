#include "engine/site/revision.h"

#include <fmt/format.h>

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

/// A list of texts; what else stands in it is reported as `what`.
std::vector<std::string> texts_of(FieldReader& reader, const char* field, const char* what) {
  std::vector<std::string> texts;
  const auto* list = reader.optional_list(field);
  if (list == nullptr) return texts;
  for (const auto& one : *list) {
    if (one.is_string()) {
      texts.push_back(one.get<std::string>());
    } else {
      reader.report("not-a-text", what, field, "a text");
    }
  }
  return texts;
}

Revision read_revision(nlohmann::json& json, const std::string& pointer, Problems& problems) {
  FieldReader reader(json, pointer, problems);
  Revision revision;
  revision.id = reader.required_text("id");
  revision.after = texts_of(reader, "after", "The id of a revision belongs here.");
  revision.settles = texts_of(reader, "settles", "The pointer of a conflict belongs here.");
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

}  // namespace proofstone
