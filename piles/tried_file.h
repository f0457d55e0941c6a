#pragma once

#include <iosfwd>
#include <string>
#include <vector>

#include "piles/outline_trial.h"

namespace proofstone::piles {

/// Writes what was tried, outlines and all, so that it can be judged again without its pictures:
/// JSON, lengths in metres, places in pixels.
void write_tried(std::ostream& out, const std::vector<TriedPile>& piles);

/// What `write_tried` wrote. Problems name the file that is missing or spoiled.
Expected<std::vector<TriedPile>> read_tried(const std::string& path);

}  // namespace proofstone::piles
