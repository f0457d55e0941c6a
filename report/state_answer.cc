#include "report/state_answer.h"

#include <nlohmann/json.hpp>
#include <set>

#include "engine/json/strict_json.h"
#include "engine/site/revision.h"

namespace proofstone {
namespace {

using nlohmann::json;

json revision_json(const Revision& revision) {
  json touches = json::array();
  for (const auto& change : revision.changes) touches.push_back(change.pointer);
  return {{"id", revision.id},         {"after", revision.after}, {"time", revision.time},
          {"author", revision.author}, {"note", revision.note},   {"touches", std::move(touches)}};
}

json heads_of(const std::vector<Revision>& revisions) {
  std::set<std::string> stood_upon;
  for (const auto& revision : revisions) {
    stood_upon.insert(revision.after.begin(), revision.after.end());
  }
  json heads = json::array();
  for (const auto& revision : revisions) {
    if (!stood_upon.contains(revision.id)) heads.push_back(revision.id);
  }
  return heads;
}

}  // namespace

Expected<json> state_answer(const json& document) {
  json parsed = document;
  if (document.is_string()) {
    auto strict = parse_strict_json(document.get_ref<const std::string&>());
    if (!strict) return strict.problems();
    parsed = std::move(*strict);
  }
  auto revisions = read_revisions(std::move(parsed));
  if (!revisions) return revisions.problems();
  json answer = {{"revisions", json::array()}, {"heads", heads_of(*revisions)}};
  for (const auto& revision : *revisions) answer["revisions"].push_back(revision_json(revision));
  auto state = fold(std::move(*revisions));
  if (!state) return state.problems();
  answer["state"] = std::move(*state);
  return answer;
}

}  // namespace proofstone
