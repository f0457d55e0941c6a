#include "engine/rock/gradation.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/quantity/measure.h"
#include "engine/rock/limit_curve.h"

namespace proofstone {
namespace {

Problem point_problem(std::size_t index, const std::string& code, const std::string& what,
                      const std::string& allowed) {
  return {code, what, {}, fmt::format("point {}", index + 1), allowed};
}

/// What is wrong with each point by itself.
Problems unusable_points(const std::vector<GradationPoint>& points) {
  Problems problems;
  for (std::size_t i = 0; i < points.size(); ++i) {
    const auto& [size, percent] = points[i];
    if (!(size.si() > 0) || !std::isfinite(size.si())) {
      problems.push_back(point_problem(i, "size-not-positive", "This size is not above zero.",
                                       "a size above zero"));
    }
    if (!(percent >= 0 && percent <= 100)) {
      problems.push_back(point_problem(
          i, "percent-outside", fmt::format("{} is no percent smaller.", significant(percent, 6)),
          "0 to 100"));
    }
  }
  return problems;
}

/// What is wrong between neighbours. `points` go from small to large if `rising`, else the other
/// way.
Problems points_out_of_order(const std::vector<GradationPoint>& points, bool rising) {
  Problems problems;
  for (std::size_t i = 1; i < points.size(); ++i) {
    const auto& smaller = rising ? points[i - 1] : points[i];
    const auto& larger = rising ? points[i] : points[i - 1];
    if (smaller.size == larger.size) {
      problems.push_back(
          point_problem(i, "size-twice", "This size stands twice in the curve.", "each size once"));
    } else if (smaller.size > larger.size) {
      problems.push_back(point_problem(i, "sizes-out-of-order",
                                       "The sizes neither rise nor fall throughout.",
                                       "sizes from small to large or from large to small"));
    } else if (smaller.percent_smaller > larger.percent_smaller) {
      problems.push_back(point_problem(
          i, "percent-falls",
          "Less is smaller than the larger of two sizes than is smaller than the smaller one.",
          "percents that never fall with size"));
    }
  }
  return problems;
}

}  // namespace

std::string_view size_meaning_name(SizeMeaning meaning) {
  switch (meaning) {
    case SizeMeaning::intermediate_axis:
      return "intermediate axis";
    case SizeMeaning::sphere:
      return "sphere";
    case SizeMeaning::sieve:
      return "sieve";
  }
  return {};
}

std::string_view percent_of_name(PercentOf percent_of) {
  switch (percent_of) {
    case PercentOf::mass:
      return "mass";
    case PercentOf::count:
      return "count";
  }
  return {};
}

Expected<Gradation> Gradation::make(std::vector<GradationPoint> points, GradationBasis basis) {
  if (points.size() < 2) {
    return Problem{"too-few-points",
                   "A gradation curve needs at least two points.",
                   {},
                   {},
                   "two or more sizes with the percent smaller than each"};
  }
  Problems problems = unusable_points(points);
  if (!problems.empty()) return problems;
  const bool rising = points.front().size <= points.back().size;
  problems = points_out_of_order(points, rising);
  if (!problems.empty()) return problems;
  if (!rising) std::reverse(points.begin(), points.end());
  return Gradation(std::move(points), basis);
}

double Gradation::percent_smaller(Length size) const { return percent_on_curve(points_, size); }

Expected<Length> Gradation::size_at(double percent) const {
  if (const auto size = size_on_curve(points_, percent)) return *size;
  return Problem{"beyond-curve",
                 fmt::format("The curve does not reach {} % smaller.", significant(percent, 4)),
                 {},
                 {},
                 fmt::format("{} to {} %", significant(points_.front().percent_smaller, 4),
                             significant(points_.back().percent_smaller, 4))};
}

}  // namespace proofstone
