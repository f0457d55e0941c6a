#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "engine/finding/problem.h"
#include "engine/site/revision.h"

namespace proofstone {

/// In which order revisions are played, and which of them were made upon which. Two copies of one
/// site that hold the same revisions in any order play them in the same one: every revision after
/// those it was made upon, and else by time and id. A revision that names none stands upon the one
/// written before it.
class RevisionOrder {
 public:
  /// Problems: a revision upon one that does not stand before it, an id used twice.
  static Expected<RevisionOrder> of(const std::vector<Revision>& revisions);

  /// Indices into the revisions, the first played first.
  const std::vector<std::size_t>& played() const { return played_; }
  /// Whether each was made upon the one before it: then nobody worked beside another.
  bool is_chain() const { return chain_; }
  /// Whether what `later` changes was made knowing `earlier`.
  bool stands_upon(std::size_t later, std::size_t earlier) const;
  /// The revisions that no other stands upon, in the order written.
  std::vector<std::size_t> heads() const;

 private:
  std::vector<std::vector<std::size_t>> parents_;
  std::vector<std::size_t> played_;
  std::vector<std::size_t> place_;  ///< of each revision among those played
  bool chain_ = true;
};

}  // namespace proofstone
