#pragma once

#include <limits>
#include <vector>

namespace proofstone {

/// One row of a linear program: Σ a·x at most, equal to or at least a bound.
struct LinearRow {
  enum class Sense { at_most, equal, at_least };
  std::vector<double> coefficients;  ///< one a variable; missing ones at the end count as 0
  Sense sense = Sense::at_most;
  double bound = 0;
};

/// Minimise Σ cost·x over the rows with lower ≤ x ≤ upper. Small and dense: tens of variables and
/// rows. An upper bound may be infinite, a lower one not.
struct LinearProgram {
  std::vector<double> cost;
  std::vector<double> lower;
  std::vector<double> upper;
  std::vector<LinearRow> rows;

  static constexpr double unlimited = std::numeric_limits<double>::infinity();
  /// Adds a variable and returns its number.
  std::size_t add_variable(double cost_of_one, double least = 0, double most = unlimited);
};

enum class ProgramStatus {
  optimal,
  infeasible,
  unbounded,
  gave_up,  ///< the work allowed was spent, or rounding stood in the way: nothing is claimed
};

struct LinearSolution {
  ProgramStatus status = ProgramStatus::gave_up;
  std::vector<double> x;
  double value = 0;
};

/// How far the rows, each divided by its largest coefficient, may be missed.
inline constexpr double row_tolerance = 1e-7;

/// Two-phase primal simplex on a dense tableau with bounded variables (Dantzig 1963). Every answer
/// that is called optimal was put back into the rows and keeps them to `row_tolerance`.
LinearSolution solve(const LinearProgram& program);

/// The most by which `x` misses a row (divided by the row's largest coefficient) or a bound.
double largest_miss(const LinearProgram& program, const std::vector<double>& x);

/// Σ cost·x.
double value_of(const LinearProgram& program, const std::vector<double>& x);

}  // namespace proofstone
