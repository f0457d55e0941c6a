#pragma once

#include "engine/finding/problem.h"

namespace proofstone {

/// A problem of a section, its water or its parts; no file and row are known here.
inline Problem section_problem(const std::string& code, const std::string& what,
                               const std::string& where, const std::string& allowed) {
  return {code, what, "", where, allowed};
}

}  // namespace proofstone
