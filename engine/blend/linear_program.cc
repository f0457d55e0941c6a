#include "engine/blend/linear_program.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace proofstone {
namespace {

constexpr double zero_cost = 1e-10;    // a reduced cost, costs scaled to 1
constexpr double zero_pivot = 1e-9;    // a tableau entry, rows scaled to 1
constexpr std::size_t patience = 200;  // pivots by largest gain before Bland's rule ends cycling
constexpr std::size_t most_pivots = 20000;

double largest_of(const std::vector<double>& values) {
  double largest = 0;
  for (const double value : values) largest = std::max(largest, std::abs(value));
  return largest > 0 ? largest : 1;
}

/// The tableau. Every variable runs from 0 to its span; one that stands at its upper end is turned
/// round ("flipped"), so that all that are not basic stand at 0.
class Tableau {
 public:
  explicit Tableau(const LinearProgram& program) : program_(program) {
    count_ = program.cost.size();
    for (std::size_t j = 0; j < count_; ++j) span_.push_back(program.upper[j] - program.lower[j]);
    for (const auto& row : program.rows) add_row(row);
    width_ = span_.size();
    first_artificial_ = width_;
    for (auto& row : rows_) row.resize(width_, 0);
    for (std::size_t i = 0; i < rows_.size(); ++i) add_artificial(i);
    flipped_.assign(width_, false);
    for (auto& row : rows_) row.resize(width_, 0);
  }

  LinearSolution run() {
    LinearSolution solution;
    if (std::any_of(span_.begin(), span_.end(), [](double span) { return span < 0; })) {
      solution.status = ProgramStatus::infeasible;
      return solution;
    }
    std::vector<double> costs(width_, 0);
    for (std::size_t j = first_artificial_; j < width_; ++j) costs[j] = 1;
    auto status = minimise(costs);
    if (status != ProgramStatus::optimal) return solution;
    if (left_over() > row_tolerance) {
      solution.status = ProgramStatus::infeasible;
      return solution;
    }
    for (std::size_t j = first_artificial_; j < width_; ++j) span_[j] = 0;
    std::fill(costs.begin(), costs.end(), 0);
    const double scale = largest_of(program_.cost);
    for (std::size_t j = 0; j < count_; ++j) costs[j] = program_.cost[j] / scale;
    status = minimise(costs);
    solution.status = status;
    if (status != ProgramStatus::optimal) return solution;
    solution.x = point();
    solution.value = value_of(program_, solution.x);
    if (largest_miss(program_, solution.x) > 10 * row_tolerance) {
      solution.status = ProgramStatus::gave_up;
    }
    return solution;
  }

 private:
  void add_row(const LinearRow& given) {
    std::vector<double> row(count_, 0);
    std::copy(given.coefficients.begin(), given.coefficients.end(), row.begin());
    double right = given.bound;
    for (std::size_t j = 0; j < count_; ++j) right -= row[j] * program_.lower[j];
    const double scale = largest_of(row);
    for (double& entry : row) entry /= scale;
    right /= scale;
    const std::size_t slack = span_.size();
    const double of_slack = given.sense == LinearRow::Sense::at_least ? -1 : 1;
    if (given.sense != LinearRow::Sense::equal) {
      span_.push_back(LinearProgram::unlimited);
      row.resize(slack + 1, 0);
      row[slack] = of_slack;
    }
    if (right < 0) {
      for (double& entry : row) entry = -entry;
      right = -right;
    }
    // A slack that enters with +1 can begin in the basis; any other row needs an artificial one.
    const bool starts = given.sense != LinearRow::Sense::equal && row[slack] > 0;
    rows_.push_back(std::move(row));
    right_.push_back(right);
    basis_.push_back(starts ? slack : none);
  }

  void add_artificial(std::size_t i) {
    if (basis_[i] != none) return;
    span_.push_back(LinearProgram::unlimited);
    rows_[i].resize(width_ + 1, 0);
    rows_[i][width_] = 1;
    basis_[i] = width_++;
  }

  /// What the artificial variables still hold.
  double left_over() const {
    double sum = 0;
    for (std::size_t i = 0; i < basis_.size(); ++i) {
      if (basis_[i] >= first_artificial_) sum += right_[i];
    }
    return sum;
  }

  ProgramStatus minimise(std::vector<double> costs) {
    for (std::size_t j = 0; j < width_; ++j) {
      if (flipped_[j]) costs[j] = -costs[j];
    }
    reduced_ = costs;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      const double cost = costs[basis_[i]];
      if (std::abs(cost) > 0) subtract(reduced_, rows_[i], cost);
    }
    for (std::size_t pivots = 0; pivots < most_pivots; ++pivots) {
      const bool by_gain = pivots < patience;
      const auto entering = choose_entering(by_gain);
      if (!entering) return ProgramStatus::optimal;
      if (!step(*entering, by_gain)) return ProgramStatus::unbounded;
    }
    return ProgramStatus::gave_up;
  }

  std::optional<std::size_t> choose_entering(bool by_gain) const {
    std::optional<std::size_t> best;
    for (std::size_t j = 0; j < width_; ++j) {
      // A variable without room cannot move; this also keeps artificial ones out of phase two.
      if (reduced_[j] > -zero_cost || !(span_[j] > 0)) continue;
      if (!by_gain) return j;
      if (!best || reduced_[j] < reduced_[*best]) best = j;
    }
    return best;
  }

  /// Moves the entering variable as far as it can go; false when nothing stops it.
  bool step(std::size_t entering, bool by_gain) {
    double room = span_[entering];
    std::size_t leaving = none;
    bool at_top = false;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      const double entry = rows_[i][entering];
      if (std::abs(entry) < zero_pivot) continue;
      const bool rises = entry < 0;
      const double way = rises ? (span_[basis_[i]] - right_[i]) / -entry : right_[i] / entry;
      const double held = std::max(0.0, way);
      if (!std::isfinite(held) || held > room + zero_pivot) continue;
      const bool nearer = held < room - zero_pivot || leaving == none;
      const bool preferred =
          !nearer && (by_gain ? std::abs(entry) > std::abs(rows_[leaving][entering])
                              : basis_[i] < basis_[leaving]);
      if (!nearer && !preferred) continue;
      if (leaving == none && held > room) continue;
      room = std::min(room, held);
      leaving = i;
      at_top = rises;
    }
    if (leaving == none) {
      if (!std::isfinite(room)) return false;
      flip(entering);
      return true;
    }
    if (at_top) turn_round_basic(leaving);
    pivot(leaving, entering);
    return true;
  }

  void flip(std::size_t j) {
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      right_[i] = std::max(0.0, right_[i] - rows_[i][j] * span_[j]);
      rows_[i][j] = -rows_[i][j];
    }
    reduced_[j] = -reduced_[j];
    flipped_[j] = !flipped_[j];
  }

  void turn_round_basic(std::size_t i) {
    const std::size_t j = basis_[i];
    for (double& entry : rows_[i]) entry = -entry;
    rows_[i][j] = 1;
    right_[i] = span_[j] - right_[i];
    flipped_[j] = !flipped_[j];
  }

  void pivot(std::size_t leaving, std::size_t entering) {
    auto& row = rows_[leaving];
    const double divisor = row[entering];
    for (double& entry : row) entry /= divisor;
    right_[leaving] = std::max(0.0, right_[leaving] / divisor);
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      const double factor = rows_[i][entering];
      if (i == leaving || !(std::abs(factor) > 0)) continue;
      subtract(rows_[i], row, factor);
      rows_[i][entering] = 0;
      right_[i] = std::max(0.0, right_[i] - factor * right_[leaving]);
    }
    subtract(reduced_, row, reduced_[entering]);
    reduced_[entering] = 0;
    basis_[leaving] = entering;
  }

  static void subtract(std::vector<double>& from, const std::vector<double>& row, double factor) {
    for (std::size_t j = 0; j < from.size(); ++j) from[j] -= factor * row[j];
  }

  std::vector<double> point() const {
    std::vector<double> at(width_, 0);
    for (std::size_t i = 0; i < basis_.size(); ++i) at[basis_[i]] = right_[i];
    std::vector<double> x;
    for (std::size_t j = 0; j < count_; ++j) {
      const double from_low = flipped_[j] ? span_[j] - at[j] : at[j];
      x.push_back(std::min(program_.lower[j] + from_low, program_.upper[j]));
    }
    return x;
  }

  static constexpr std::size_t none = static_cast<std::size_t>(-1);
  const LinearProgram& program_;
  std::size_t count_ = 0;  ///< of the program's own variables
  std::size_t width_ = 0;
  std::size_t first_artificial_ = 0;
  std::vector<double> span_;
  std::vector<bool> flipped_;
  std::vector<std::vector<double>> rows_;
  std::vector<double> right_;
  std::vector<double> reduced_;
  std::vector<std::size_t> basis_;
};

}  // namespace

std::size_t LinearProgram::add_variable(double cost_of_one, double least, double most) {
  cost.push_back(cost_of_one);
  lower.push_back(least);
  upper.push_back(most);
  return cost.size() - 1;
}

LinearSolution solve(const LinearProgram& program) { return Tableau(program).run(); }

double largest_miss(const LinearProgram& program, const std::vector<double>& x) {
  double most = 0;
  for (std::size_t j = 0; j < x.size(); ++j) {
    most = std::max({most, program.lower[j] - x[j], x[j] - program.upper[j]});
  }
  for (const auto& row : program.rows) {
    double sum = 0;
    for (std::size_t j = 0; j < row.coefficients.size(); ++j) sum += row.coefficients[j] * x[j];
    const double over = (sum - row.bound) / largest_of(row.coefficients);
    if (row.sense != LinearRow::Sense::at_least) most = std::max(most, over);
    if (row.sense != LinearRow::Sense::at_most) most = std::max(most, -over);
  }
  return most;
}

double value_of(const LinearProgram& program, const std::vector<double>& x) {
  double sum = 0;
  for (std::size_t j = 0; j < x.size(); ++j) sum += program.cost[j] * x[j];
  return sum;
}

}  // namespace proofstone
