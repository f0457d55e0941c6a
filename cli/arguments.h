#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "engine/finding/problem.h"

namespace proofstone {

/// A command line taken apart: the command, what stands after it, options.
struct Arguments {
  std::string command;
  std::vector<std::string> words;
  std::map<std::string, std::string> values;  ///< "--units si" → {"units", "si"}
  std::set<std::string> flags;                ///< "--json"

  bool has(const std::string& flag) const { return flags.contains(flag); }
  std::string value(const std::string& name, const std::string& otherwise = {}) const;
};

/// Takes a command line apart. Problems: an unknown option, an option without its value, an option
/// twice.
Expected<Arguments> take_apart(const std::vector<std::string>& line);

}  // namespace proofstone
