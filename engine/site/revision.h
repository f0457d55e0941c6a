#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "engine/finding/problem.h"

namespace proofstone {

/// One change inside a revision: a value put at a JSON pointer of the state, or taken away.
struct Change {
  enum class Action { set, remove };
  Action action = Action::set;
  std::string pointer;   ///< "/zones/outer-bank"
  nlohmann::json value;  ///< for `set`
};

/// One act of editing: who, when, why and what. Revisions are appended and never rewritten; the
/// state of a site is their fold.
struct Revision {
  std::string id;
  std::vector<std::string> after;  ///< ids of the revisions it was made upon; empty: the one before
  std::string time;                ///< RFC 3339 in UTC, "2026-05-04T15:10:00Z"
  std::string author;
  std::string note;
  std::vector<Change> changes;
  std::vector<std::string> settles;  ///< pointers of conflicts that are right as they stand now
};

/// Reads the envelope of a site document: `proofstone`, `format` and `revisions`. Problems are
/// located by JSON pointer in the document.
Expected<std::vector<Revision>> read_revisions(nlohmann::json document);

}  // namespace proofstone
