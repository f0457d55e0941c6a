#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/finding/problem.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// No stone of the trade is larger: beyond it a size is a slip of the pen or of the unit.
inline constexpr Length largest_believable_size = Length::meters(5);

/// The size range of a bin or of a weighed group. Internal to the evidence.
struct SizeRange {
  std::optional<Length> lower;  ///< zero is read as absent
  Length upper;
};

/// Checks that ranges join into one row of sizes without gap or overlap, and returns their places
/// in the list from small to large. They may come largest first; only the smallest may lack a lower
/// edge. Edges that differ by less than a thousandth of the size (a unit conversion rounded) join.
/// Problems name the range by `word` and its number in the list: "bin 3".
Expected<std::vector<std::size_t>> order_of_ranges(std::vector<SizeRange> ranges,
                                                   const std::string& word);

/// The Problem, if any, of one stone size.
std::optional<Problem> problem_of_size(Length size, const std::string& where);

}  // namespace proofstone
