#include "engine/site/revision_order.h"

#include <fmt/format.h>

#include <map>
#include <set>
#include <tuple>

namespace proofstone {
namespace {

/// The revisions that each was made upon, by index.
std::vector<std::vector<std::size_t>> parents_of(const std::vector<Revision>& revisions,
                                                 Problems& problems) {
  std::map<std::string, std::size_t> known;
  std::vector<std::vector<std::size_t>> parents(revisions.size());
  for (std::size_t i = 0; i < revisions.size(); ++i) {
    const auto where = fmt::format("/revisions/{}", i);
    for (const auto& id : revisions[i].after) {
      const auto found = known.find(id);
      if (found != known.end()) {
        parents[i].push_back(found->second);
        continue;
      }
      problems.push_back({"unknown-revision",
                          fmt::format("The revision \"{}\" does not stand before this one.", id),
                          "", where + "/after", "ids of earlier revisions"});
    }
    if (revisions[i].after.empty() && i > 0) parents[i].push_back(i - 1);
    if (!known.emplace(revisions[i].id, i).second) {
      problems.push_back({"repeated-id",
                          fmt::format("The revision id \"{}\" stands twice.", revisions[i].id), "",
                          where + "/id", "an id of its own for every revision"});
    }
  }
  return parents;
}

bool each_upon_the_last(const std::vector<std::vector<std::size_t>>& parents) {
  for (std::size_t i = 1; i < parents.size(); ++i) {
    if (parents[i].size() != 1 || parents[i].front() != i - 1) return false;
  }
  return true;
}

/// Every revision after its parents, and else the earliest first.
std::vector<std::size_t> ordered(const std::vector<Revision>& revisions,
                                 const std::vector<std::vector<std::size_t>>& parents) {
  std::vector<std::vector<std::size_t>> children(revisions.size());
  std::vector<std::size_t> waits_for(revisions.size());
  using Ready = std::tuple<std::string, std::string, std::size_t>;
  std::set<Ready> ready;
  const auto make_ready = [&](std::size_t i) {
    ready.emplace(revisions[i].time, revisions[i].id, i);
  };
  for (std::size_t i = 0; i < revisions.size(); ++i) {
    waits_for[i] = parents[i].size();
    for (const auto parent : parents[i]) children[parent].push_back(i);
    if (waits_for[i] == 0) make_ready(i);
  }
  std::vector<std::size_t> order;
  order.reserve(revisions.size());
  while (!ready.empty()) {
    const auto next = std::get<std::size_t>(*ready.begin());
    ready.erase(ready.begin());
    order.push_back(next);
    for (const auto child : children[next]) {
      if (--waits_for[child] == 0) make_ready(child);
    }
  }
  return order;
}

}  // namespace

Expected<RevisionOrder> RevisionOrder::of(const std::vector<Revision>& revisions) {
  Problems problems;
  RevisionOrder order;
  order.parents_ = parents_of(revisions, problems);
  if (!problems.empty()) return problems;
  order.chain_ = each_upon_the_last(order.parents_);
  order.played_ = ordered(revisions, order.parents_);
  order.place_.resize(revisions.size());
  for (std::size_t i = 0; i < order.played_.size(); ++i) order.place_[order.played_[i]] = i;
  return order;
}

bool RevisionOrder::stands_upon(std::size_t later, std::size_t earlier) const {
  if (chain_) return earlier < later;
  std::set<std::size_t> seen;
  std::vector<std::size_t> open = {later};
  while (!open.empty()) {
    const auto at = open.back();
    open.pop_back();
    for (const auto parent : parents_[at]) {
      if (parent == earlier) return true;
      // What was played before `earlier` cannot have been made upon it.
      if (place_[parent] > place_[earlier] && seen.insert(parent).second) open.push_back(parent);
    }
  }
  return false;
}

std::vector<std::size_t> RevisionOrder::heads() const {
  std::vector<bool> stood_upon(parents_.size());
  for (const auto& parents : parents_) {
    for (const auto parent : parents) stood_upon[parent] = true;
  }
  std::vector<std::size_t> heads;
  for (std::size_t i = 0; i < parents_.size(); ++i) {
    if (!stood_upon[i]) heads.push_back(i);
  }
  return heads;
}

}  // namespace proofstone
