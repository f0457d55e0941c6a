#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/site/findings.h"

namespace proofstone {

/// One matter of a comparison, and what stands in each of its columns.
struct ComparedRow {
  std::string what;
  struct Cell {
    std::string text;
    std::optional<Margin> margin = {};
    std::optional<Outcome> outcome = {};
    /// What the cell was read from, with its steps; absent where it was stated.
    std::optional<Finding> finding = {};
  };
  std::vector<Cell> cells;
};

}  // namespace proofstone
