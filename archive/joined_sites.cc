#include "archive/joined_sites.h"

#include <fmt/format.h>

#include <map>
#include <nlohmann/json.hpp>
#include <utility>

#include "archive/without_places.h"
#include "engine/finding/quoted_text.h"
#include "engine/json/strict_json.h"
#include "engine/site/revision.h"

namespace proofstone {
namespace {

/// In the order in which the fields were written: what a site is called by is made of its text.
using Json = nlohmann::ordered_json;

/// The revisions of a document with what each was made upon said, so that they mean the same in
/// any order.
Expected<Json> revisions_of(const std::string& document, const std::string& name) {
  const auto strict = parse_strict_json(document);
  auto problems = strict ? Problems{} : strict.problems();
  if (strict) {
    if (const auto read = read_revisions(*strict); !read) problems = read.problems();
  }
  if (!problems.empty()) {
    for (auto& problem : problems) problem.file = name;
    return problems;
  }
  auto revisions = Json::parse(document)["revisions"];
  for (std::size_t i = 1; i < revisions.size(); ++i) {
    auto& after = revisions[i]["after"];
    if (after.empty()) after = Json::array({revisions[i - 1]["id"]});
  }
  return revisions;
}

/// However their fields are ordered, and whether or not they say where they were taken down: a copy
/// may leave that out.
bool same(const Json& one, const Json& other) {
  const auto compared = [](const Json& revision) {
    return nlohmann::json(revision_without_positions(revision));
  };
  return compared(one) == compared(other);
}

Problem differs(std::string_view kind, const std::string& thing, const std::string& one_name,
                const std::string& other_name) {
  return {
      "reads-otherwise",
      fmt::format("The {} {} stands in both copies and is not the same.", kind, in_quotes(thing)),
      other_name, "", fmt::format("a copy of the site in {}", one_name)};
}

}  // namespace

Expected<JoinedSites> joined_sites(PackedSite one, PackedSite other, const std::string& one_name,
                                   const std::string& other_name) {
  auto revisions = revisions_of(one.document, one_name);
  if (!revisions) return revisions.problems();
  auto more = revisions_of(other.document, other_name);
  if (!more) return more.problems();
  if (!same(revisions->front(), more->front())) {
    return Problem{"other-site", "These are two sites: their first revisions differ.", other_name,
                   "/revisions/0", fmt::format("a copy of the site in {}", one_name)};
  }
  std::map<std::string, Json> known;
  for (const auto& revision : *revisions) known.emplace(revision["id"], revision);
  JoinedSites joined;
  std::size_t shared = 0;
  for (const auto& revision : *more) {
    const auto id = revision["id"].get<std::string>();
    const auto there = known.find(id);
    if (there == known.end()) {
      revisions->push_back(revision);
      ++joined.only_in_other;
    } else if (same(there->second, revision)) {
      ++shared;
    } else {
      return differs("revision", id, one_name, other_name);
    }
  }
  joined.only_in_one = known.size() - shared;

  for (auto& file : other.files) {
    const auto there = std::find_if(one.files.begin(), one.files.end(),
                                    [&](const auto& kept) { return kept.name == file.name; });
    if (there == one.files.end()) {
      one.files.push_back(std::move(file));
    } else if (there->text != file.text) {
      return differs("file", file.name, one_name, other_name);
    }
  }
  for (auto& photo : other.photos) {
    const auto there = std::find_if(one.photos.begin(), one.photos.end(), [&](const auto& kept) {
      return photo_hash_in(kept.name) == photo_hash_in(photo.name);
    });
    if (there == one.photos.end()) {
      one.photos.push_back(std::move(photo));
    } else if (there->bytes != photo.bytes) {
      return differs("photo", photo.name, one_name, other_name);
    }
  }
  const Json whole = {{"proofstone", "site"}, {"format", 1}, {"revisions", std::move(*revisions)}};
  one.document = whole.dump(2) + "\n";
  joined.site = std::move(one);
  return joined;
}

}  // namespace proofstone
