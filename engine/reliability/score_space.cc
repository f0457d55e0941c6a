#include "engine/reliability/score_space.h"

#include <fmt/format.h>

#include <Eigen/Cholesky>
#include <cmath>
#include <numeric>

#include "engine/reliability/shifted_sobol.h"

namespace proofstone {
namespace {

Problem bad_correlation(const std::string& what) {
  return {"bad-correlation", what, "", "", "coefficients above −1 and below 1"};
}

}  // namespace

Expected<ScoreSpace> ScoreSpace::of(const LimitState& limit,
                                    const std::vector<Correlation>& correlations) {
  const auto size = limit.variables().size();
  if (size == 0) {
    return Problem{"nothing-uncertain", "No quantity of this limit state is uncertain.", "", "",
                   "at least one quantity with a spread"};
  }
  if (2 * size > ShiftedSobol::most_dimensions) {
    return Problem{"too-many-uncertain",
                   fmt::format("{} quantities of this limit state are uncertain.", size), "", "",
                   fmt::format("at most {}", ShiftedSobol::most_dimensions / 2)};
  }
  ScoreSpace space(limit);
  if (correlations.empty()) return space;
  Eigen::MatrixXd matrix =
      Eigen::MatrixXd::Identity(static_cast<Eigen::Index>(size), static_cast<Eigen::Index>(size));
  for (const auto& [first, second, coefficient] : correlations) {
    if (first >= size || second >= size || first == second) {
      return bad_correlation("A correlation names a variable that is not there.");
    }
    if (!(std::abs(coefficient) < 1)) {
      return bad_correlation("A correlation coefficient is not between −1 and 1.");
    }
    const auto i = static_cast<Eigen::Index>(first);
    const auto j = static_cast<Eigen::Index>(second);
    matrix(i, j) = coefficient;
    matrix(j, i) = coefficient;
  }
  const Eigen::LLT<Eigen::MatrixXd> factor(matrix);
  if (factor.info() != Eigen::Success) {
    return bad_correlation("The correlation coefficients contradict each other.");
  }
  const Eigen::MatrixXd lower = factor.matrixL();
  space.lower_.resize(size * size);
  for (std::size_t row = 0; row < size; ++row) {
    for (std::size_t column = 0; column < size; ++column) {
      space.lower_[row * size + column] =
          lower(static_cast<Eigen::Index>(row), static_cast<Eigen::Index>(column));
    }
  }
  return space;
}

double ScoreSpace::correlation(std::size_t first, std::size_t second) const {
  if (independent()) return first == second ? 1 : 0;
  double sum = 0;
  for (std::size_t k = 0; k < size(); ++k) sum += lower(first, k) * lower(second, k);
  return sum;
}

void ScoreSpace::values_at(std::span<const double> scores, std::span<double> values) const {
  const auto& variables = limit_->variables();
  for (std::size_t i = 0; i < size(); ++i) {
    double score = scores[i];
    if (!independent()) {
      score = 0;
      for (std::size_t k = 0; k <= i; ++k) score += lower(i, k) * scores[k];
    }
    values[i] = variables[i].distribution.at_score(score);
  }
}

std::vector<double> ScoreSpace::values_at(std::span<const double> scores) const {
  std::vector<double> values(size());
  values_at(scores, values);
  return values;
}

std::vector<double> ScoreSpace::scores_of(std::span<const double> values) const {
  std::vector<double> scores(size());
  for (std::size_t i = 0; i < size(); ++i) {
    scores[i] = limit_->variables()[i].distribution.score_of(values[i]);
    if (independent()) continue;
    for (std::size_t k = 0; k < i; ++k) scores[i] -= lower(i, k) * scores[k];
    scores[i] /= lower(i, i);
  }
  return scores;
}

std::vector<double> ScoreSpace::importance(std::span<const double> direction) const {
  // γ = L⁻ᵀ·α, normalised: back substitution with the transposed factor.
  std::vector<double> gamma(direction.begin(), direction.end());
  if (!independent()) {
    for (std::size_t i = size(); i-- > 0;) {
      for (std::size_t k = i + 1; k < size(); ++k) gamma[i] -= lower(k, i) * gamma[k];
      gamma[i] /= lower(i, i);
    }
  }
  for (double& share : gamma) share *= share;
  const double sum = std::accumulate(gamma.begin(), gamma.end(), 0.0);
  for (double& share : gamma) share /= sum;
  return gamma;
}

}  // namespace proofstone
