#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/evidence/measured_gradation.h"

namespace proofstone {

/// A sample sorted by size and weighed group by group, as its file holds it.
struct WeighedSampleTable {
  std::vector<WeighedGroup> groups;
  Unit larger_than_unit = unit::inch;
  Unit not_larger_unit = unit::inch;
  Unit mass_unit = unit::pound;
};

/// Reads a weighed sample, smallest or largest group first:
///
///     larger than (in), not larger than (in), mass (lb), stones
///     , 6, 310, 41
///     6, 9, 820, 30
///
/// The `larger than` of the smallest group may be empty or 0. Sizes in in, ft, mm or cm; masses in
/// lb, ton (2000 lb), kg or t. `stones` may be left out, or empty, where nobody counted; a group
/// that holds nothing has mass 0 and 0 stones. Problems name `file`, the row and the field; those
/// of the engine about a group name the row too.
Expected<WeighedSampleTable> read_weighed_sample_csv(std::string_view bytes,
                                                     const std::string& file);

}  // namespace proofstone
