#pragma once

#include <string>

#include "engine/finding/problem.h"

namespace proofstone {

/// A problem of a whole file, or of a place in it.
inline Problem in_file(const std::string& file, const std::string& code, const std::string& what,
                       const std::string& allowed, const std::string& where = {}) {
  return {code, what, file, where, allowed};
}

}  // namespace proofstone
