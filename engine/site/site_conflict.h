#pragma once

#include <string>
#include <vector>

namespace proofstone {

/// Two changes of the same thing, neither made knowing the other, in words.
struct SiteConflict {
  struct Side {
    std::string author;
    std::string time;
    std::string what;  ///< "set to …", "removed"
  };
  std::string place;  ///< what both touch, by name
  Side stands;
  Side passed_over;
};

}  // namespace proofstone
