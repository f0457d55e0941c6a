#pragma once

#include <optional>

#include "engine/blend/linear_program.h"

namespace proofstone {

/// A linear program some of whose variables are whole numbers. Those need finite bounds.
struct IntegerProgram {
  LinearProgram linear;
  std::vector<bool> whole;  ///< one a variable
  /// Every value of a whole solution is a multiple of this, where that is known: truckloads priced
  /// in cents. It lets the search stop as soon as no better multiple is left.
  std::optional<double> value_step;
};

struct IntegerSolution {
  ProgramStatus status = ProgramStatus::gave_up;
  std::vector<double> x;  ///< whole where asked for; the best found, if any
  double value = 0;
  double bound = 0;          ///< no whole solution is better than this
  bool proven = false;       ///< the search was finished: nothing better exists
  std::size_t programs = 0;  ///< linear programs solved
};

/// Branch and bound on the simplex (Land and Doig 1960): the best that whole numbers can do, with
/// the proof, or the best found when `most_programs` is spent (`proven` is then false and `bound`
/// says how much better a solution could still be). A whole solution is checked in its own rows.
IntegerSolution solve(const IntegerProgram& program, std::size_t most_programs = 20000);

}  // namespace proofstone
