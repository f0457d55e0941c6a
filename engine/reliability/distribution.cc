#include "engine/reliability/distribution.h"

#include <algorithm>
#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/evidence/standard_normal.h"

namespace proofstone {
namespace {

constexpr double outermost_score = 8;
constexpr double least_share_kept = 1e-6;

Problem not_a_distribution(const std::string& what, const std::string& allowed) {
  return {"not-a-distribution", what, "", "", allowed};
}

bool finite(double a, double b) { return std::isfinite(a) && std::isfinite(b); }

/// What a cut normal distribution keeps: the chance below the cuts and the densities at them.
struct Cut {
  double alpha;
  double beta;
  double share;
  double density_low;
  double density_high;
};

Cut cut_of(double mean, double deviation, double low, double high) {
  const double alpha = (low - mean) / deviation;
  const double beta = (high - mean) / deviation;
  // From the nearer tail, so that a cut far out keeps its digits.
  const double share = alpha > 0 ? normal_cumulative(-alpha) - normal_cumulative(-beta)
                                 : normal_cumulative(beta) - normal_cumulative(alpha);
  return {alpha, beta, share, normal_density(alpha), normal_density(beta)};
}

double triangular_at(double low, double mode, double high, double probability) {
  const double width = high - low;
  const double at_mode = (mode - low) / width;
  if (probability < at_mode) return low + std::sqrt(probability * width * (mode - low));
  return high - std::sqrt((1 - probability) * width * (high - mode));
}

double triangular_below(double low, double mode, double high, double value) {
  const double width = high - low;
  if (value <= low) return 0;
  if (value >= high) return 1;
  if (value < mode) return (value - low) * (value - low) / (width * (mode - low));
  return 1 - (high - value) * (high - value) / (width * (high - mode));
}

}  // namespace

Expected<Distribution> Distribution::normal(double mean, double standard_deviation) {
  if (!finite(mean, standard_deviation) || !(standard_deviation > 0)) {
    return not_a_distribution("A normal distribution needs a mean and a spread.",
                              "a standard deviation above 0");
  }
  return Distribution(DistributionFamily::normal, mean, standard_deviation, 0, 0);
}

Expected<Distribution> Distribution::lognormal(double mean, double standard_deviation) {
  if (!finite(mean, standard_deviation) || !(mean > 0 && standard_deviation > 0)) {
    return not_a_distribution("A lognormal distribution needs a positive mean and a spread.",
                              "a mean and a standard deviation above 0");
  }
  const double variation = standard_deviation / mean;
  const double variance = std::log1p(variation * variation);
  return Distribution(DistributionFamily::lognormal, std::log(mean) - variance / 2,
                      std::sqrt(variance), 0, 0);
}

Expected<Distribution> Distribution::truncated_normal(double mean, double standard_deviation,
                                                      double low, double high) {
  const bool good = finite(mean, standard_deviation) && finite(low, high) &&
                    standard_deviation > 0 && low < high &&
                    cut_of(mean, standard_deviation, low, high).share >= least_share_kept;
  if (!good) {
    return not_a_distribution("The bounds of a truncated normal distribution do not fit its mean.",
                              "a lower bound below the upper, with the mean in or near them");
  }
  return Distribution(DistributionFamily::truncated_normal, mean, standard_deviation, low, high);
}

Expected<Distribution> Distribution::triangular(double low, double most_likely, double high) {
  if (!finite(low, high) || !(low < high && low <= most_likely && most_likely <= high)) {
    return not_a_distribution("A triangular distribution needs three values in order.",
                              "lowest ≤ most likely ≤ highest, and lowest below highest");
  }
  return Distribution(DistributionFamily::triangular, most_likely, 0, low, high);
}

Expected<Distribution> Distribution::uniform(double low, double high) {
  if (!finite(low, high) || !(low < high)) {
    return not_a_distribution("A uniform distribution needs two values in order.",
                              "lowest below highest");
  }
  return Distribution(DistributionFamily::uniform, 0, 0, low, high);
}

double Distribution::mean() const {
  switch (family_) {
    case DistributionFamily::normal:
      return a_;
    case DistributionFamily::lognormal:
      return std::exp(a_ + b_ * b_ / 2);
    case DistributionFamily::truncated_normal: {
      const Cut cut = cut_of(a_, b_, low_, high_);
      return a_ + b_ * (cut.density_low - cut.density_high) / cut.share;
    }
    case DistributionFamily::triangular:
      return (low_ + a_ + high_) / 3;
    case DistributionFamily::uniform:
      return (low_ + high_) / 2;
  }
  return a_;
}

double Distribution::standard_deviation() const {
  switch (family_) {
    case DistributionFamily::normal:
      return b_;
    case DistributionFamily::lognormal:
      return std::exp(a_ + b_ * b_ / 2) * std::sqrt(std::expm1(b_ * b_));
    case DistributionFamily::truncated_normal: {
      const Cut cut = cut_of(a_, b_, low_, high_);
      const double shift = (cut.density_low - cut.density_high) / cut.share;
      const double edges = (cut.alpha * cut.density_low - cut.beta * cut.density_high) / cut.share;
      return b_ * std::sqrt(std::max(0.0, 1 + edges - shift * shift));
    }
    case DistributionFamily::triangular: {
      const double left = a_ - low_;
      const double right = high_ - a_;
      return std::sqrt((left * left + left * right + right * right) / 18);
    }
    case DistributionFamily::uniform:
      return (high_ - low_) / std::sqrt(12.0);
  }
  return b_;
}

double Distribution::at_score(double score) const {
  if (family_ == DistributionFamily::normal) return a_ + b_ * score;
  if (family_ == DistributionFamily::lognormal) return std::exp(a_ + b_ * score);
  if (family_ == DistributionFamily::truncated_normal) {
    const Cut cut = cut_of(a_, b_, low_, high_);
    // In the upper half everything is measured from above, so that the tail keeps its digits.
    const double inner =
        score > 0
            ? -normal_quantile(normal_cumulative(-cut.beta) + cut.share * normal_cumulative(-score))
            : normal_quantile(normal_cumulative(cut.alpha) + cut.share * normal_cumulative(score));
    return std::isfinite(inner) ? std::clamp(a_ + b_ * inner, low_, high_)
                                : (score > 0 ? high_ : low_);
  }
  if (score > 0) {
    const double above = normal_cumulative(-score);
    if (family_ == DistributionFamily::uniform) return high_ - (high_ - low_) * above;
    return low_ + high_ - triangular_at(low_, low_ + high_ - a_, high_, above);
  }
  const double below = normal_cumulative(score);
  if (family_ == DistributionFamily::uniform) return low_ + (high_ - low_) * below;
  return triangular_at(low_, a_, high_, below);
}

double Distribution::score_of(double value) const {
  if (family_ == DistributionFamily::normal) return (value - a_) / b_;
  if (family_ == DistributionFamily::lognormal) {
    return value > 0 ? (std::log(value) - a_) / b_ : -outermost_score;
  }
  const double below = cumulative(value);
  if (!(below > 0)) return -outermost_score;
  if (!(below < 1)) return outermost_score;
  return std::clamp(normal_quantile(below), -outermost_score, outermost_score);
}

double Distribution::at_probability(double probability) const {
  if (family_ == DistributionFamily::uniform) return low_ + (high_ - low_) * probability;
  if (family_ == DistributionFamily::triangular) {
    return triangular_at(low_, a_, high_, probability);
  }
  return at_score(normal_quantile(probability));
}

double Distribution::cumulative(double value) const {
  switch (family_) {
    case DistributionFamily::normal:
      return normal_cumulative((value - a_) / b_);
    case DistributionFamily::lognormal:
      return value > 0 ? normal_cumulative((std::log(value) - a_) / b_) : 0;
    case DistributionFamily::truncated_normal: {
      if (value <= low_) return 0;
      if (value >= high_) return 1;
      return cut_of(a_, b_, low_, value).share / cut_of(a_, b_, low_, high_).share;
    }
    case DistributionFamily::triangular:
      return triangular_below(low_, a_, high_, value);
    case DistributionFamily::uniform:
      return std::clamp((value - low_) / (high_ - low_), 0.0, 1.0);
  }
  return 0;
}

}  // namespace proofstone
