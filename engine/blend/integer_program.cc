#include "engine/blend/integer_program.h"

#include <algorithm>
#include <cmath>

namespace proofstone {
namespace {

constexpr double nearly_whole = 1e-6;

/// A part of the search: bounds narrowed so far, and what their linear program came to.
struct Branch {
  std::vector<double> lower;
  std::vector<double> upper;
  LinearSolution relaxed;
};

class Search {
 public:
  Search(const IntegerProgram& program, std::size_t most_programs)
      : program_(program), linear_(program.linear), allowed_(most_programs) {}

  IntegerSolution run() {
    add(linear_.lower, linear_.upper);
    while (!open_.empty() && !cut_short_) {
      std::pop_heap(open_.begin(), open_.end(), worse);
      Branch branch = std::move(open_.back());
      open_.pop_back();
      if (!can_better(branch.relaxed.value)) {
        open_.clear();
        break;
      }
      bound_ = branch.relaxed.value;
      dive(std::move(branch));
    }
    return answer();
  }

 private:
  /// The most promising branch lies on top of the heap; of equal ones the one found first does not
  /// matter, since values alone decide.
  static bool worse(const Branch& a, const Branch& b) { return a.relaxed.value > b.relaxed.value; }

  bool can_better(double relaxed) const {
    if (!best_) return true;
    double reach = relaxed;
    if (program_.value_step) {
      const double step = *program_.value_step;
      reach = step * std::ceil(relaxed / step - nearly_whole);
    }
    return reach < value_ - 1e-9 * std::max(1.0, std::abs(value_));
  }

  std::optional<LinearSolution> relax(const std::vector<double>& lower,
                                      const std::vector<double>& upper) {
    if (programs_ >= allowed_) {
      cut_short_ = true;
      return std::nullopt;
    }
    ++programs_;
    linear_.lower = lower;
    linear_.upper = upper;
    auto solution = solve(linear_);
    if (solution.status == ProgramStatus::unbounded) unbounded_ = true;
    if (solution.status == ProgramStatus::gave_up) unsure_ = true;
    if (solution.status != ProgramStatus::optimal) return std::nullopt;
    return solution;
  }

  void add(std::vector<double> lower, std::vector<double> upper) {
    auto relaxed = relax(lower, upper);
    if (!relaxed || !can_better(relaxed->value)) return;
    open_.push_back({std::move(lower), std::move(upper), std::move(*relaxed)});
    std::push_heap(open_.begin(), open_.end(), worse);
  }

  std::optional<std::size_t> most_torn(const std::vector<double>& x) const {
    std::optional<std::size_t> found;
    double most = nearly_whole;
    for (std::size_t j = 0; j < x.size(); ++j) {
      if (!program_.whole[j]) continue;
      const double torn = std::abs(x[j] - std::round(x[j]));
      if (torn > most) {
        most = torn;
        found = j;
      }
    }
    return found;
  }

  /// Follows a branch down the nearer side to a whole solution, leaving the other sides open.
  void dive(Branch branch) {
    while (!cut_short_ && can_better(branch.relaxed.value)) {
      const auto& x = branch.relaxed.x;
      const auto torn = most_torn(x);
      if (!torn) {
        take(x);
        return;
      }
      const double down = std::floor(x[*torn]);
      const bool down_first = x[*torn] - down < 0.5;
      auto lower = branch.lower;
      auto upper = branch.upper;
      (down_first ? lower[*torn] : upper[*torn]) = down_first ? down + 1 : down;
      (down_first ? branch.upper[*torn] : branch.lower[*torn]) = down_first ? down : down + 1;
      add(std::move(lower), std::move(upper));
      auto relaxed = relax(branch.lower, branch.upper);
      if (!relaxed) return;
      branch.relaxed = std::move(*relaxed);
    }
    // A branch that is left unfinished because the work is spent stays open.
    if (cut_short_) open_.push_back(std::move(branch));
  }

  void take(std::vector<double> x) {
    for (std::size_t j = 0; j < x.size(); ++j) {
      if (program_.whole[j]) x[j] = std::round(x[j]);
    }
    if (largest_miss(program_.linear, x) > 10 * row_tolerance) {
      unsure_ = true;
      return;
    }
    const double value = value_of(program_.linear, x);
    if (best_ && !(value < value_)) return;
    value_ = value;
    best_ = std::move(x);
  }

  IntegerSolution answer() const {
    IntegerSolution solution;
    solution.programs = programs_;
    const bool finished = !cut_short_ && !unsure_ && !unbounded_;
    if (unbounded_ && !best_) solution.status = ProgramStatus::unbounded;
    solution.bound = bound_;
    if (!best_) {
      if (finished) solution.status = ProgramStatus::infeasible;
      solution.proven = finished;
      return solution;
    }
    solution.status = ProgramStatus::optimal;
    solution.x = *best_;
    solution.value = value_;
    solution.proven = finished;
    solution.bound = finished ? value_ : std::min(bound_, value_);
    return solution;
  }

  const IntegerProgram& program_;
  LinearProgram linear_;
  std::size_t allowed_;
  std::size_t programs_ = 0;
  bool cut_short_ = false;
  bool unsure_ = false;
  bool unbounded_ = false;
  double bound_ = -LinearProgram::unlimited;
  std::vector<Branch> open_;
  std::optional<std::vector<double>> best_;
  double value_ = 0;
};

}  // namespace

IntegerSolution solve(const IntegerProgram& program, std::size_t most_programs) {
  return Search(program, most_programs).run();
}

}  // namespace proofstone
