#pragma once

#include "engine/finding/problem.h"

namespace proofstone {

enum class DistributionFamily { normal, lognormal, truncated_normal, triangular, uniform };

/// How an uncertain quantity is spread. Numbers are in whatever unit the caller keeps to; nothing
/// in the family is a default: the spread is always stated by somebody.
class Distribution {
 public:
  /// Mean and standard deviation (more than 0).
  static Expected<Distribution> normal(double mean, double standard_deviation);
  /// Mean and standard deviation of the quantity itself, not of its logarithm; both more than 0.
  static Expected<Distribution> lognormal(double mean, double standard_deviation);
  /// A normal distribution cut off at `low` and `high`; mean and deviation are those before the
  /// cut. The interval must hold at least a millionth of the distribution.
  static Expected<Distribution> truncated_normal(double mean, double standard_deviation, double low,
                                                 double high);
  /// low ≤ most_likely ≤ high, low < high.
  static Expected<Distribution> triangular(double low, double most_likely, double high);
  /// low < high.
  static Expected<Distribution> uniform(double low, double high);

  DistributionFamily family() const { return family_; }
  double mean() const;
  double standard_deviation() const;
  /// Standard deviation over mean.
  double coefficient_of_variation() const { return standard_deviation() / mean(); }

  /// The value that is not exceeded with probability Φ(score): turns a standard normal variable
  /// into this one.
  double at_score(double score) const;
  /// The score of `value`: at_score turned round. Outside a bounded distribution it is ±8.
  double score_of(double value) const;
  /// The value that is not exceeded with `probability`, inside 0 to 1.
  double at_probability(double probability) const;
  /// Chance of a value not above `value`.
  double cumulative(double value) const;

 private:
  Distribution(DistributionFamily family, double a, double b, double low, double high)
      : family_(family), a_(a), b_(b), low_(low), high_(high) {}

  DistributionFamily family_;
  double a_;  ///< location: mean, mean of the logarithm, or the most likely value
  double b_;  ///< scale: standard deviation, of the logarithm for the lognormal
  double low_;
  double high_;
};

}  // namespace proofstone
