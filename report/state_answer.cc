#include "report/state_answer.h"

#include <nlohmann/json.hpp>

#include "engine/json/strict_json.h"
#include "engine/site/fold.h"

namespace proofstone {
namespace {

using nlohmann::json;

json revision_json(const Revision& revision) {
  json touches = json::array();
  for (const auto& change : revision.changes) touches.push_back(change.pointer);
  return {{"id", revision.id},         {"after", revision.after}, {"time", revision.time},
          {"author", revision.author}, {"note", revision.note},   {"touches", std::move(touches)}};
}

json side_json(const ConflictSide& side) {
  json written = {{"revision", side.revision}, {"author", side.author}, {"time", side.time}};
  if (side.change.action == Change::Action::set) {
    written["set"] = side.change.pointer;
    written["to"] = side.change.value;
  } else {
    written["remove"] = side.change.pointer;
  }
  return written;
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
  json answer = {{"revisions", json::array()}, {"conflicts", json::array()}};
  for (const auto& revision : *revisions) answer["revisions"].push_back(revision_json(revision));
  auto folded = fold(std::move(*revisions));
  if (!folded) return folded.problems();
  answer["state"] = std::move(folded->state);
  answer["heads"] = std::move(folded->heads);
  for (const auto& conflict : folded->conflicts) {
    answer["conflicts"].push_back({{"pointer", conflict.pointer},
                                   {"stands", side_json(conflict.stands)},
                                   {"passed_over", side_json(conflict.passed_over)}});
  }
  return answer;
}

}  // namespace proofstone
