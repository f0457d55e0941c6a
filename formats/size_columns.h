#pragma once

#include <optional>

#include "engine/quantity/quantity.h"
#include "formats/csv_columns.h"

namespace proofstone {

/// The units in which stones are measured: in, ft, mm, cm.
const std::vector<Unit>& stone_size_units();

/// The two ends of a range of sizes.
struct RangeEnds {
  std::optional<Length> larger_than;
  Length not_larger_than;
};

/// Reads the ends of a range; the lower one may be empty or 0 in the first and in the last row,
/// where the smallest stones stand.
Expected<RangeEnds> read_range_ends(const CsvTable& table, const CsvRow& row,
                                    const FoundColumn& larger_than,
                                    const FoundColumn& not_larger_than);

}  // namespace proofstone
