#include "engine/site/fold.h"

#include <fmt/format.h>

namespace proofstone {
namespace {

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

/// Plays one change; `value` is what it sets.
void play(const Change& change, nlohmann::json value, nlohmann::json& state,
          const std::string& where, Problems& problems) {
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
    (*parent)[key] = std::move(value);
  } else if (parent->erase(key) == 0) {
    problems.push_back({"no-such-place", fmt::format("\"{}\" is not there.", change.pointer), "",
                        where, "the pointer of something that exists"});
  }
}

}  // namespace

Expected<Folded> fold(std::vector<Revision> revisions) {
  const auto order = RevisionOrder::of(revisions);
  if (!order) return order.problems();
  Folded folded;
  folded.state = nlohmann::json::object();
  Problems problems;
  ConflictsInPlay conflicts(revisions, *order);
  for (const auto index : order->played()) {
    auto& revision = revisions[index];
    for (std::size_t k = 0; k < revision.changes.size(); ++k) {
      auto& change = revision.changes[k];
      if (conflicts.rule(index, change) == ConflictsInPlay::Ruling::pass_over) continue;
      // Values can be long. Where nobody worked beside another, none is looked at again.
      auto value = order->is_chain() ? std::move(change.value) : change.value;
      play(change, std::move(value), folded.state,
           fmt::format("/revisions/{}/changes/{}", index, k), problems);
    }
    conflicts.settle(index);
    folded.last = revision.id;
  }
  if (!problems.empty()) return problems;
  for (const auto head : order->heads()) folded.heads.push_back(revisions[head].id);
  folded.conflicts = conflicts.found();
  return folded;
}

}  // namespace proofstone
