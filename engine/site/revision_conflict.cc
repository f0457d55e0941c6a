#include "engine/site/revision_conflict.h"

#include <algorithm>
#include <iterator>

namespace proofstone {
namespace {

/// More than anybody settles one by one; beyond it the later change just stands.
constexpr std::size_t most_conflicts = 200;

/// Whether `inner` is `outer` or lies inside it.
bool lies_in(const std::string& inner, const std::string& outer) {
  return inner == outer || (inner.size() > outer.size() && inner[outer.size()] == '/' &&
                            inner.compare(0, outer.size(), outer) == 0);
}

bool is_removal(const Change& change) { return change.action == Change::Action::remove; }

bool say_the_same(const Change& one, const Change& other) {
  if (one.pointer != other.pointer || one.action != other.action) return false;
  return is_removal(one) || one.value == other.value;
}

/// Whether the change played earlier stands against the one at hand.
bool earlier_stands(const Change& earlier, const Change& now) {
  if (is_removal(now)) return !is_removal(earlier) && lies_in(earlier.pointer, now.pointer);
  return is_removal(earlier) && earlier.pointer != now.pointer &&
         lies_in(now.pointer, earlier.pointer);
}

}  // namespace

std::vector<ConflictsInPlay::Write> ConflictsInPlay::crossing(std::size_t revision,
                                                              const std::string& pointer) const {
  std::vector<Write> found;
  const auto take = [&](const std::vector<Write>& writes) {
    for (const auto& write : writes) {
      if (write.revision != revision && !order_.stands_upon(revision, write.revision)) {
        found.push_back(write);
      }
    }
  };
  for (auto end = pointer.find('/', 1); end != std::string::npos;
       end = pointer.find('/', end + 1)) {
    const auto outer = writes_.find(pointer.substr(0, end));
    if (outer != writes_.end()) take(outer->second);
  }
  const auto same = writes_.find(pointer);
  if (same != writes_.end()) take(same->second);
  const auto inside = pointer + "/";
  for (auto at = writes_.lower_bound(inside);
       at != writes_.end() && at->first.compare(0, inside.size(), inside) == 0; ++at) {
    take(at->second);
  }
  return found;
}

ConflictSide ConflictsInPlay::side(const Write& write) const {
  const auto& revision = revisions_[write.revision];
  return {revision.id, revision.time, revision.author, *write.change};
}

bool ConflictsInPlay::knows(std::size_t revision, std::size_t other) const {
  return revision == other || order_.stands_upon(revision, other);
}

void ConflictsInPlay::forget_rewritten(const Write& now, const Write& earlier) {
  const auto says_less = [&](const ConflictSide& own, std::size_t by, const ConflictSide& other,
                             std::size_t other_by) {
    return other_by == earlier.revision && other.change.pointer == earlier.change->pointer &&
           knows(now.revision, by) && lies_in(own.change.pointer, now.change->pointer);
  };
  for (std::size_t i = found_.size(); i-- > 0;) {
    const auto& [stands, passed_over] = crossings_[i];
    if (says_less(found_[i].stands, stands, found_[i].passed_over, passed_over) ||
        says_less(found_[i].passed_over, passed_over, found_[i].stands, stands)) {
      const auto at = static_cast<std::ptrdiff_t>(i);
      found_.erase(found_.begin() + at);
      crossings_.erase(crossings_.begin() + at);
    }
  }
}

void ConflictsInPlay::add(const Write& stands, const Write& passed_over) {
  RevisionConflict conflict;
  conflict.stands = side(stands);
  conflict.passed_over = side(passed_over);
  const auto& one = stands.change->pointer;
  const auto& other = passed_over.change->pointer;
  conflict.pointer = one.size() > other.size() ? one : other;
  found_.push_back(std::move(conflict));
  crossings_.push_back({stands.revision, passed_over.revision});
}

void ConflictsInPlay::remember(std::size_t revision, const Change& change) {
  const auto drop_known = [&](std::vector<Write>& writes) {
    const auto known_to_it = [&](const Write& write) { return knows(revision, write.revision); };
    writes.erase(std::remove_if(writes.begin(), writes.end(), known_to_it), writes.end());
  };
  auto& same = writes_[change.pointer];
  drop_known(same);
  same.push_back({revision, &change});
  // What the same side wrote inside is written anew with the whole.
  const auto inside = change.pointer + "/";
  auto at = writes_.lower_bound(inside);
  while (at != writes_.end() && at->first.compare(0, inside.size(), inside) == 0) {
    drop_known(at->second);
    at = at->second.empty() ? writes_.erase(at) : std::next(at);
  }
}

ConflictsInPlay::Ruling ConflictsInPlay::rule(std::size_t revision, const Change& change) {
  if (order_.is_chain() || found_.size() >= most_conflicts) return Ruling::play;
  const Write now = {revision, &change};
  bool passed_over = false;
  for (const auto& earlier : crossing(revision, change.pointer)) {
    if (say_the_same(*earlier.change, change)) {
      // What both remove is gone once.
      passed_over = passed_over || is_removal(change);
      continue;
    }
    if (is_removal(*earlier.change) && is_removal(change)) {
      passed_over = passed_over || lies_in(change.pointer, earlier.change->pointer);
      continue;
    }
    const bool kept = earlier_stands(*earlier.change, change);
    passed_over = passed_over || kept;
    forget_rewritten(now, earlier);
    if (kept) {
      add(earlier, now);
    } else {
      add(now, earlier);
    }
  }
  if (passed_over) return Ruling::pass_over;
  remember(revision, change);
  return Ruling::play;
}

void ConflictsInPlay::settle(std::size_t revision) {
  if (found_.empty()) return;
  const auto& by = revisions_[revision];
  const auto has_the_word = [&](const RevisionConflict& conflict) {
    return std::any_of(by.settles.begin(), by.settles.end(),
                       [&](const auto& pointer) { return lies_in(conflict.pointer, pointer); }) ||
           std::any_of(by.changes.begin(), by.changes.end(), [&](const Change& change) {
             return lies_in(conflict.pointer, change.pointer);
           });
  };
  for (std::size_t i = found_.size(); i-- > 0;) {
    const auto at = static_cast<std::ptrdiff_t>(i);
    if (has_the_word(found_[i]) && order_.stands_upon(revision, crossings_[i].first) &&
        order_.stands_upon(revision, crossings_[i].second)) {
      found_.erase(found_.begin() + at);
      crossings_.erase(crossings_.begin() + at);
    }
  }
}

}  // namespace proofstone
