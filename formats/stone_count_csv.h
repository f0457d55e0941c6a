#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/evidence/measured_gradation.h"

namespace proofstone {

/// A field count as its file holds it: exactly one of `intermediate_axes` and `bins` is filled.
struct StoneCountTable {
  std::vector<Length> intermediate_axes;
  std::vector<CountBin> bins;
  Unit axis_unit = unit::inch;         ///< of the axes
  Unit larger_than_unit = unit::inch;  ///< of the bins' lower ends
  Unit not_larger_unit = unit::inch;   ///< of the bins' upper ends
};

/// Reads a count of stones, one stone a row
///
///     stone, intermediate axis (in)
///     1, 11.5
///
/// (`stone`, `longest axis` and `shortest axis` may be left out; the axes of a stone must be in
/// order), or in bins, smallest or largest first
///
///     larger than (in), not larger than (in), stones
///     , 3, 4
///     3, 6, 17
///
/// where the `larger than` of the smallest bin may be empty or 0. Sizes in in, ft, mm or cm.
/// Problems name `file`, the row and the field; those of the engine about a stone or a bin name the
/// row too.
Expected<StoneCountTable> read_stone_count_csv(std::string_view bytes, const std::string& file);

}  // namespace proofstone
