#pragma once

#include <vector>

#include "engine/evidence/measured_gradation.h"
#include "engine/method/method.h"

namespace proofstone {

/// Pearson's χ² of a table of counts: do its rows share the same proportions?
struct ChiSquare {
  double statistic = 0;
  double degrees_of_freedom = 0;
  double chance = 1;  ///< of a statistic at least as large when all rows share them
};

/// Rows of equal length. Columns without any count are left out. Problems: fewer than two rows or
/// filled columns, rows of different length, an empty row, negative or not finite counts.
Expected<ChiSquare> chi_square_of_rows(const std::vector<std::vector<double>>& rows);

/// Whether several looks can be looks at one and the same rock.
struct SameRock {
  bool differ = false;  ///< the looks differ at the confidence asked
  ChiSquare test;
  std::vector<Length> class_edges;  ///< the sizes between the compared classes
  Steps steps;
};

/// χ² test of homogeneity on the shares of the looks between common sizes, with effective stones
/// for counts. The sizes are those at which 15, 30, 50, 70 and 85 % of all looks together are
/// smaller; neighbouring classes are joined until every look expects at least five stones in each
/// (Cochran's rule). Not to differ is no proof of sameness: with few stones only large differences
/// show.
///
/// Problems: fewer than two looks, bases that differ, too few stones for two classes, confidence
/// not from 0.5 to below 1.
Expected<SameRock> same_rock(const std::vector<MeasuredGradation>& looks, double confidence);

/// The χ² test by name: "same-rock".
const Method& same_rock_method();

}  // namespace proofstone
