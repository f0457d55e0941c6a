#pragma once

#include <string>
#include <vector>

#include "engine/finding/source.h"

namespace proofstone {

/// A published family of rock classes whose limits stand in no document held here: said so, rather
/// than silently missing or guessed at.
struct FamilyNotHeld {
  std::string family;
  Source source;      ///< the document that has the limits; the standing is that of `known`
  std::string known;  ///< what of it is known, without the limits
};

const std::vector<FamilyNotHeld>& families_not_held();

/// What whoever orders such rock can do.
const std::string& what_to_do_without_limits();

}  // namespace proofstone
