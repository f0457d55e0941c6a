#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "engine/json/strict_json.h"
#include "engine/site/revision_conflict.h"

namespace proofstone {

/// What revisions leave.
struct Folded {
  Folded() = default;
  Folded(const Folded&) = default;
  Folded(Folded&&) = default;
  Folded& operator=(const Folded&) = default;
  Folded& operator=(Folded&&) = default;
  ~Folded() { let_go(state); }

  nlohmann::json state;
  std::string last;                         ///< id of the revision played last
  std::vector<std::string> heads;           ///< ids of those that no other stands upon
  std::vector<RevisionConflict> conflicts;  ///< not settled yet
};

/// Plays the revisions onto an empty state, in the order of RevisionOrder. Changes that cross are
/// told, and one of them stands. Problems: as RevisionOrder::of; a pointer whose parent does not
/// exist, something removed that is not there.
Expected<Folded> fold(std::vector<Revision> revisions);

}  // namespace proofstone
