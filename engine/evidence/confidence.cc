#include "engine/evidence/confidence.h"

#include <algorithm>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/erf.hpp>
#include <boost/math/special_functions/gamma.hpp>
#include <cmath>
#include <limits>

#include "engine/evidence/size_error.h"
#include "engine/numeric/narrowed_bracket.h"

namespace proofstone {
namespace {

// Plain doubles inside: long double differs between a desk machine and a browser.
using InDoubles = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

bool is_confidence(double confidence) { return confidence > 0 && confidence < 1; }

/// Share of the way from 0 to 1 at which a continuous `rising` function, not below zero at 1,
/// crosses zero, as near as a double can tell of the function.
template <class Rising>
double crossing(Rising rising, double at_one) {
  constexpr double told_apart = 1e-15;
  const double at_zero = rising(0.0);
  if (!(at_zero < 0)) return 0;
  const auto value = [&](double t) {
    const double there = rising(t);
    return std::abs(there) < told_apart ? 0 : there;
  };
  const auto close = [](double a, double b) { return std::abs(b - a) <= told_apart; };
  return narrowed_bracket(value, {0, at_zero}, {1, at_one}, close, 120).first;
}

Length between(Length from, Length to, double part) {
  return Length::meters(from.meters() * std::pow(to.meters() / from.meters(), part));
}

/// Walks the curve from `start` towards one end (`step` −1 or +1) and returns the first size at
/// which `beyond`, how far a confidence lies beyond the one asked, is not negative.
template <class Beyond>
std::optional<Length> first_shown(const Gradation& curve, Length start, int step, Beyond beyond) {
  const auto& points = curve.points();
  Length from = start;
  auto next = static_cast<int>(
      std::lower_bound(points.begin(), points.end(), start,
                       [](const GradationPoint& point, Length size) { return point.size < size; }) -
      points.begin());
  if (step < 0) --next;
  for (; next >= 0 && next < static_cast<int>(points.size()); next += step) {
    const Length to = points[static_cast<std::size_t>(next)].size;
    const double at_point = beyond(to);
    if (at_point >= 0) {
      const double part =
          crossing([&](double t) { return beyond(between(from, to, t)); }, at_point);
      return between(from, to, part);
    }
    from = to;
  }
  return std::nullopt;
}

/// By which way a curve is better drawn is not known: so many times the square of half their
/// difference is added to the variance of the share. Found on simulated piles, where it makes
/// intervals hold as stated.
constexpr double allowance = 2;

/// A share read halfway between two ways to draw the curve, and the effective stones behind it with
/// the half by which either way is off counted as scatter.
struct ShareRead {
  double percent = 0;
  double stones = 0;
};

ShareRead share_read_at(const MeasuredGradation& measured, Length size) {
  const double stones = measured.effective_stones_at(size);
  const double percent = std::clamp(measured.percent_read_halfway(size), 0.0, 100.0);
  const double error = measured.reading_error_at(size) / 200;
  const double share = percent / 100;
  if (!(error > 0) || !(share > 0 && share < 1)) return {percent, stones};
  return {percent, 1 / (1 / stones + allowance * error * error / (share * (1 - share)))};
}

/// How sure it is by Jeffreys' distribution of the share that it is at most `limit`.
double jeffreys_at_most(const ShareRead& read, double limit) {
  if (!(read.stones > 0)) return 0.5;
  const double x = std::min(read.stones, read.stones * read.percent / 100);
  return boost::math::ibeta(x + 0.5, read.stones - x + 0.5, limit / 100, InDoubles());
}

/// The sizes around that at the percent from which on `at_most` and `at_least`, how sure it is that
/// the percent is at most, or at least, smaller than a size, reach what is wanted.
template <class AtMost, class AtLeast>
SizeInterval size_interval_by(const MeasuredGradation& measured, double percent, double confidence,
                              AtMost at_most, AtLeast at_least) {
  SizeInterval interval;
  if (!(percent > 0 && percent < 100) || !is_confidence(confidence)) return interval;
  const double wanted = 1 - (1 - confidence) / 2;
  const Gradation& curve = measured.curve;
  const auto& first = curve.points().front();
  const auto middle = curve.size_at(percent);
  if (middle) {
    interval.low =
        first_shown(curve, *middle, -1, [&](Length size) { return at_most(size) - wanted; });
  }
  // Inside an open smallest bin the curve says nothing, but above it the upper limit may still be
  // read.
  if (middle || first.percent_smaller > percent) {
    interval.high = first_shown(curve, middle ? *middle : first.size, +1,
                                [&](Length size) { return at_least(size) - wanted; });
  }
  return interval;
}

}  // namespace

double chance_of_at_most(double smaller, double stones, double percent) {
  if (!(smaller >= 0 && smaller <= stones && stones > 0 && percent >= 0 && percent <= 100))
    return 1;
  if (smaller >= stones || percent <= 0) return 1;
  if (percent >= 100) return 0;
  return boost::math::ibeta(stones - smaller, smaller + 1, 1 - percent / 100, InDoubles());
}

double chance_of_at_least(double smaller, double stones, double percent) {
  if (!(smaller >= 0 && smaller <= stones && stones > 0 && percent >= 0 && percent <= 100))
    return 1;
  if (smaller <= 0 || percent >= 100) return 1;
  if (percent <= 0) return 0;
  return boost::math::ibeta(smaller, stones - smaller + 1, percent / 100, InDoubles());
}

double normal_quantile(double probability) {
  if (!(probability > 0 && probability < 1)) return std::numeric_limits<double>::quiet_NaN();
  return -std::sqrt(2.0) * boost::math::erfc_inv(2 * probability, InDoubles());
}

double student_quantile_above(double tail, double degrees_of_freedom) {
  if (!(tail > 0 && tail <= 0.5 && degrees_of_freedom > 0)) {
    return std::numeric_limits<double>::quiet_NaN();
  }
  const double x = boost::math::ibeta_inv(degrees_of_freedom / 2, 0.5, 2 * tail, InDoubles());
  return std::sqrt(degrees_of_freedom * (1 - x) / x);
}

double chi_square_tail(double statistic, double degrees_of_freedom) {
  if (!(statistic > 0 && degrees_of_freedom > 0)) return 1;
  if (std::isinf(statistic)) return 0;
  return boost::math::gamma_q(degrees_of_freedom / 2, statistic / 2, InDoubles());
}

namespace {

/// Limits by the beta distribution, with `shared` of one stone more counted as smaller and the rest
/// of it as larger for the lower limit, the other way round for the upper: none of it for exact
/// limits (Clopper and Pearson), half of it for those of Jeffreys.
PercentInterval beta_interval(double percent, double effective_stones, double confidence,
                              double shared) {
  PercentInterval interval;
  if (!(effective_stones > 0 && percent >= 0 && percent <= 100) || !is_confidence(confidence)) {
    return interval;
  }
  const double n = effective_stones;
  const double x = std::min(n, n * percent / 100);
  const double each_tail = (1 - confidence) / 2;
  if (x > 0) {
    interval.low =
        100 * boost::math::ibeta_inv(x + shared, n - x + (1 - shared), each_tail, InDoubles());
  }
  if (x < n) {
    interval.high =
        100 * boost::math::ibetac_inv(x + (1 - shared), n - x + shared, each_tail, InDoubles());
  }
  return interval;
}

}  // namespace

PercentInterval percent_smaller_interval(double percent, double effective_stones,
                                         double confidence) {
  return beta_interval(percent, effective_stones, confidence, 0);
}

double confidence_at_most(double percent, double effective_stones, double limit) {
  if (limit >= 100) return 1;
  const double n = effective_stones;
  return 1 - chance_of_at_most(std::min(n, n * percent / 100), n, limit);
}

double confidence_at_least(double percent, double effective_stones, double limit) {
  if (limit <= 0) return 1;
  const double n = effective_stones;
  return 1 - chance_of_at_least(std::min(n, n * percent / 100), n, limit);
}

PercentInterval jeffreys_interval(double percent, double effective_stones, double confidence) {
  return beta_interval(percent, effective_stones, confidence, 0.5);
}

PercentInterval stated_interval(const MeasuredGradation& measured, Length size, double confidence) {
  const auto read = share_read_at(measured, size);
  return jeffreys_interval(read.percent, read.stones, confidence);
}

SizeInterval size_interval(const MeasuredGradation& measured, double percent, double confidence) {
  const auto wanted = 1 - (1 - confidence) / 2;
  const auto middle = measured.curve.size_at(percent);
  const auto error = size_error_at(measured, percent);
  if (middle && error && is_confidence(confidence)) {
    const double factor = std::exp(normal_quantile(wanted) * *error);
    return {*middle / factor, factor * *middle};
  }
  return size_interval_by(
      measured, percent, confidence,
      [&](Length size) { return jeffreys_at_most(share_read_at(measured, size), percent); },
      [&](Length size) { return 1 - jeffreys_at_most(share_read_at(measured, size), percent); });
}

SizeInterval exact_size_interval(const MeasuredGradation& measured, double percent,
                                 double confidence) {
  return size_interval_by(
      measured, percent, confidence,
      [&](Length size) {
        return confidence_at_most(measured.curve.percent_smaller(size), measured.effective_stones,
                                  percent);
      },
      [&](Length size) {
        return confidence_at_least(measured.curve.percent_smaller(size), measured.effective_stones,
                                   percent);
      });
}

std::vector<ConfidencePoint> confidence_band(const MeasuredGradation& measured, double confidence) {
  std::vector<ConfidencePoint> band;
  band.reserve(measured.curve.points().size());
  for (const auto& point : measured.curve.points()) {
    band.push_back(
        {point.size, point.percent_smaller, stated_interval(measured, point.size, confidence)});
  }
  return band;
}

Expected<LimitCurves> limit_curves(const MeasuredGradation& measured, double confidence) {
  std::vector<GradationPoint> coarse;
  std::vector<GradationPoint> fine;
  // The limits of later points may fall back a little where fewer stones speak.
  double low = 0;
  double high = 0;
  for (const auto& point : confidence_band(measured, confidence)) {
    low = std::max(low, point.interval.low);
    high = std::max(high, point.interval.high);
    coarse.push_back({point.size, low});
    fine.push_back({point.size, high});
  }
  auto coarse_curve = Gradation::make(std::move(coarse), measured.curve.basis());
  if (!coarse_curve) return coarse_curve.problems();
  auto fine_curve = Gradation::make(std::move(fine), measured.curve.basis());
  if (!fine_curve) return fine_curve.problems();
  return LimitCurves{std::move(*coarse_curve), std::move(*fine_curve)};
}

}  // namespace proofstone
