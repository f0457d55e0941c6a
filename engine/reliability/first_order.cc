#include "engine/reliability/first_order.h"

#include <cmath>

#include "engine/evidence/standard_normal.h"
#include "engine/reliability/score_space.h"

namespace proofstone {
namespace {

/// Step of the differences, in standard deviations: small against the spread, and so large that
/// last-digit differences between machines stay last-digit differences.
constexpr double step = 0.02;

Problem no_answer() {
  return {"no-answer", "The formula has no answer at or beside the means.", "", "",
          "means inside what the formula can compute"};
}

/// ∂G/∂xᵢ by the five-point rule, whose error falls with the fourth power of the step.
std::optional<double> derivative(const LimitState& limit, std::vector<double> values, std::size_t i,
                                 double width) {
  const double centre = values[i];
  const auto at = [&](double steps) {
    values[i] = centre + steps * width;
    return limit.margin(values);
  };
  const auto far_below = at(-2);
  const auto below = at(-1);
  const auto above = at(1);
  const auto far_above = at(2);
  if (!far_below || !below || !above || !far_above) return std::nullopt;
  return (8 * (*above - *below) - (*far_above - *far_below)) / (12 * width);
}

}  // namespace

Expected<FirstOrderResult> first_order(const LimitState& limit,
                                       const std::vector<Correlation>& correlations) {
  const auto space = ScoreSpace::of(limit, correlations);
  if (!space) return space.problems();
  const auto& variables = limit.variables();
  std::vector<double> means;
  std::vector<double> deviations;
  for (const auto& variable : variables) {
    means.push_back(variable.distribution.mean());
    deviations.push_back(variable.distribution.standard_deviation());
  }
  const auto centre = limit.margin(means);
  if (!centre || !std::isfinite(*centre)) return no_answer();

  FirstOrderResult result;
  result.margin_at_means = *centre;
  std::vector<double> parts;  // (∂G/∂xᵢ)σᵢ
  for (std::size_t i = 0; i < variables.size(); ++i) {
    const auto slope = derivative(limit, means, i, step * deviations[i]);
    if (!slope || !std::isfinite(*slope)) return no_answer();
    result.derivatives.push_back(*slope);
    result.elasticities.push_back(*slope * means[i]);
    parts.push_back(*slope * deviations[i]);
  }
  double variance = 0;
  for (std::size_t i = 0; i < parts.size(); ++i) {
    double share = 0;
    for (std::size_t j = 0; j < parts.size(); ++j) {
      share += parts[i] * space->correlation(i, j) * parts[j];
    }
    result.shares.push_back(share);
    variance += share;
  }
  if (!(variance > 0)) {
    return Problem{"nothing-moves", "None of the uncertain quantities moves the margin.", "", "",
                   "a quantity that this method uses"};
  }
  for (double& share : result.shares) share /= variance;
  result.standard_deviation = std::sqrt(variance);
  result.beta = result.margin_at_means / result.standard_deviation;
  result.probability = normal_cumulative(-result.beta);
  return result;
}

}  // namespace proofstone
