#include "engine/blend/simplex_fit.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace proofstone {
namespace {

using Columns = std::vector<std::vector<double>>;
using Values = std::vector<double>;

double dot(const Values& a, const Values& b) {
  double sum = 0;
  for (std::size_t i = 0; i < a.size(); ++i) sum += a[i] * b[i];
  return sum;
}

Values residual(const Columns& columns, const Values& target, const Values& shares) {
  Values rest(target.size());
  for (std::size_t k = 0; k < target.size(); ++k) {
    rest[k] = -target[k];
    for (std::size_t j = 0; j < columns.size(); ++j) rest[k] += shares[j] * columns[j][k];
  }
  return rest;
}

/// Gauss elimination with partial pivoting; absent where the matrix is singular to doubles.
std::optional<Values> solve_square(Columns matrix, Values right) {
  const std::size_t n = right.size();
  for (std::size_t k = 0; k < n; ++k) {
    std::size_t pivot = k;
    for (std::size_t i = k + 1; i < n; ++i) {
      if (std::abs(matrix[i][k]) > std::abs(matrix[pivot][k])) pivot = i;
    }
    if (!(std::abs(matrix[pivot][k]) > 1e-12)) return std::nullopt;
    std::swap(matrix[k], matrix[pivot]);
    std::swap(right[k], right[pivot]);
    for (std::size_t i = k + 1; i < n; ++i) {
      const double factor = matrix[i][k] / matrix[k][k];
      for (std::size_t j = k; j < n; ++j) matrix[i][j] -= factor * matrix[k][j];
      right[i] -= factor * right[k];
    }
  }
  for (std::size_t k = n; k-- > 0;) {
    for (std::size_t j = k + 1; j < n; ++j) right[k] -= matrix[k][j] * right[j];
    right[k] /= matrix[k][k];
  }
  return right;
}

/// The best shares of the free columns alone, 1 together, of either sign.
std::optional<Values> fit_free(const Columns& columns, const Values& target,
                               const std::vector<std::size_t>& free, double scale) {
  const std::size_t n = free.size();
  Columns matrix(n + 1, Values(n + 1, 1));
  Values right(n + 1, 1);
  for (std::size_t i = 0; i < n; ++i) {
    for (std::size_t j = 0; j < n; ++j) {
      matrix[i][j] = dot(columns[free[i]], columns[free[j]]) / scale;
    }
    right[i] = dot(columns[free[i]], target) / scale;
  }
  matrix[n][n] = 0;
  auto solved = solve_square(std::move(matrix), std::move(right));
  if (solved) solved->pop_back();
  return solved;
}

class Fit {
 public:
  Fit(const Columns& columns, const Values& target) : columns_(columns), target_(target) {
    for (const auto& column : columns) scale_ = std::max(scale_, dot(column, column));
    shares_.assign(columns.size(), 0);
    std::size_t nearest = 0;
    double least = 0;
    for (std::size_t j = 0; j < columns.size(); ++j) {
      Values alone(columns.size(), 0);
      alone[j] = 1;
      const double misfit = squared_misfit(columns, target, alone);
      if (j == 0 || misfit < least) {
        least = misfit;
        nearest = j;
      }
    }
    shares_[nearest] = 1;
    free_ = {nearest};
  }

  std::optional<Values> run() {
    const std::size_t most_rounds = 20 * columns_.size() + 100;
    for (std::size_t round = 0; round < most_rounds; ++round) {
      const auto entering = most_promising();
      if (!entering) return shares_;
      free_.push_back(*entering);
      while (true) {
        const auto fitted = fit_free(columns_, target_, free_, scale_);
        if (!fitted) return std::nullopt;
        if (move_towards(*fitted)) break;
      }
    }
    return std::nullopt;
  }

 private:
  /// The column whose gradient promises most below that of the free ones.
  std::optional<std::size_t> most_promising() const {
    const Values rest = residual(columns_, target_, shares_);
    double level = 0;
    for (const std::size_t j : free_) level += shares_[j] * dot(columns_[j], rest);
    std::optional<std::size_t> best;
    double lowest = -1e-9 * scale_;
    for (std::size_t j = 0; j < columns_.size(); ++j) {
      if (std::find(free_.begin(), free_.end(), j) != free_.end()) continue;
      const double promise = dot(columns_[j], rest) - level;
      if (promise < lowest) {
        lowest = promise;
        best = j;
      }
    }
    return best;
  }

  /// Goes to the fitted shares, or as far as none falls below zero, and lets go of those that reach
  /// it. Whether the whole way was gone.
  bool move_towards(const Values& fitted) {
    double way = 1;
    for (std::size_t i = 0; i < free_.size(); ++i) {
      if (fitted[i] > 0) continue;
      const double now = shares_[free_[i]];
      way = std::min(way, now / std::max(now - fitted[i], 1e-300));
    }
    std::vector<std::size_t> kept;
    for (std::size_t i = 0; i < free_.size(); ++i) {
      double& share = shares_[free_[i]];
      share += way * (fitted[i] - share);
      if (fitted[i] <= 0 && share < 1e-14) {
        share = 0;
      } else {
        kept.push_back(free_[i]);
      }
    }
    const bool whole_way = kept.size() == free_.size();
    free_ = std::move(kept);
    return whole_way;
  }

  const Columns& columns_;
  const Values& target_;
  double scale_ = 1;
  Values shares_;
  std::vector<std::size_t> free_;
};

bool all_finite(const Values& values) {
  return std::all_of(values.begin(), values.end(), [](double v) { return std::isfinite(v); });
}

}  // namespace

double squared_misfit(const Columns& columns, const Values& target, const Values& shares) {
  const Values rest = residual(columns, target, shares);
  return dot(rest, rest);
}

Expected<Values> best_fit_shares(const Columns& columns, const Values& target) {
  const bool sound = !columns.empty() && !target.empty() && all_finite(target) &&
                     std::all_of(columns.begin(), columns.end(), [&](const Values& column) {
                       return column.size() == target.size() && all_finite(column);
                     });
  if (!sound) {
    return Problem{"nothing-to-fit", "There is nothing that could be fitted.", "", "",
                   "at least one material and one size, with finite percents"};
  }
  const auto shares = Fit(columns, target).run();
  if (!shares) {
    return Problem{"fit-not-found", "The materials are too alike for a best fit to be told.", "",
                   "", "materials whose gradations differ"};
  }
  return *shares;
}

}  // namespace proofstone
