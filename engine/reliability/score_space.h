#pragma once

#include <vector>

#include "engine/reliability/limit_state.h"

namespace proofstone {

/// The step from independent standard normal scores to the values of a limit state.
class ScoreSpace {
 public:
  /// Problems: no variables, a variable named that is not there, coefficients outside −1 to 1 or
  /// that contradict each other.
  static Expected<ScoreSpace> of(const LimitState& limit,
                                 const std::vector<Correlation>& correlations);

  std::size_t size() const { return limit_->variables().size(); }
  const LimitState& limit() const { return *limit_; }
  bool independent() const { return lower_.empty(); }
  /// Correlation of two scores; 1 of a variable with itself.
  double correlation(std::size_t first, std::size_t second) const;

  std::vector<double> values_at(std::span<const double> scores) const;
  /// Writes into `values`, which must hold size() numbers.
  void values_at(std::span<const double> scores, std::span<double> values) const;
  /// The independent scores of values.
  std::vector<double> scores_of(std::span<const double> values) const;
  std::optional<double> margin_at(std::span<const double> scores) const {
    return limit_->margin(values_at(scores));
  }
  /// How much of the variance each variable brings, from the unit vector of the design point in
  /// independent scores; adds to 1. Where variables are correlated, by the vector of Der
  /// Kiureghian.
  std::vector<double> importance(std::span<const double> direction) const;

 private:
  explicit ScoreSpace(const LimitState& limit) : limit_(&limit) {}
  double lower(std::size_t row, std::size_t column) const { return lower_[row * size() + column]; }

  const LimitState* limit_;
  std::vector<double> lower_;  ///< Cholesky factor, row by row; empty when independent
};

}  // namespace proofstone
