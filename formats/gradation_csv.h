#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/rock/gradation.h"

namespace proofstone {

/// A sieve analysis, as its file holds it, from the largest sieve down or up.
struct GradationTable {
  std::vector<GradationPoint> points;  ///< percent passing
  /// Unit of each size as it was written; a sieve called by number is in millimetres.
  std::vector<Unit> units;
};

/// Reads a sieve analysis, from the largest sieve to the smallest or the other way:
///
///     sieve, passing (%)            size (mm), passing (%)
///     3/4 in, 100                   19, 100
///     No. 4, 78                     4.75, 78
///
/// `sieve` names each opening with its unit ("3 in", "1 1/2 in", "No. 200", "4.75 mm"); `size`
/// takes its unit from the heading (in, ft, mm, cm). In the place of `passing` may stand `retained`
/// on each sieve by itself, in percent, with a last row `pan`; the percents then sum to 100.
///
/// Refused, with the row and, where one is likely, the mend: sieves in mixed order, a sieve twice,
/// percents passing that rise as sieves get smaller, percents retained in the place of passing,
/// percents above 100 or below 0, percents retained that do not sum to 100, units mixed into a
/// column that has one, sieves without a unit or that nobody makes.
Expected<GradationTable> read_gradation_csv(std::string_view bytes, const std::string& file);

}  // namespace proofstone
