#pragma once

#include <map>
#include <string>
#include <vector>

#include "engine/site/revision.h"
#include "engine/site/revision_order.h"

namespace proofstone {

/// One side of a conflict: a change and who made it.
struct ConflictSide {
  std::string revision;
  std::string time;
  std::string author;
  Change change;
};

/// Two changes of the same thing, neither made knowing the other. Nothing of either is lost: both
/// stay in the record, one of them stands until somebody settles which is right.
struct RevisionConflict {
  std::string pointer;  ///< of what both touch: the inner one where one lies inside the other
  ConflictSide stands;
  ConflictSide passed_over;
};

/// Notes who changed what while revisions are played, and finds the changes that cross. Of two
/// values the one played later stands; what is edited on one side is not removed by the other; what
/// is edited inside something that the other side removed is passed over.
class ConflictsInPlay {
 public:
  ConflictsInPlay(const std::vector<Revision>& revisions, const RevisionOrder& order)
      : revisions_(revisions), order_(order) {}

  /// What is to be done with a change.
  enum class Ruling { play, pass_over };
  /// Rules on a change of the revision that is being played, before it is played.
  Ruling rule(std::size_t revision, const Change& change);
  /// Settles the conflicts on which `revision` has the last word.
  void settle(std::size_t revision);

  const std::vector<RevisionConflict>& found() const { return found_; }

 private:
  /// The last changes of a place; several where they cross.
  struct Write {
    std::size_t revision;
    const Change* change;
  };
  struct Crossing {
    std::size_t first;
    std::size_t second;
  };

  std::vector<Write> crossing(std::size_t revision, const std::string& pointer) const;
  /// Whether `other` is the revision itself or lies below it.
  bool knows(std::size_t revision, std::size_t other) const;
  /// Drops what was found between `earlier` and what `now` writes anew: it is told once.
  void forget_rewritten(const Write& now, const Write& earlier);
  void add(const Write& stands, const Write& passed_over);
  ConflictSide side(const Write& write) const;
  void remember(std::size_t revision, const Change& change);

  const std::vector<Revision>& revisions_;
  const RevisionOrder& order_;
  std::map<std::string, std::vector<Write>> writes_;
  std::vector<RevisionConflict> found_;
  std::vector<Crossing> crossings_;  ///< the revisions of each of `found_`
};

}  // namespace proofstone
