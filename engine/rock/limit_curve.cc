#include "engine/rock/limit_curve.h"

#include <algorithm>
#include <cmath>

namespace proofstone {

double percent_on_curve(const CurvePoints& points, Length size) {
  const auto upper = std::lower_bound(
      points.begin(), points.end(), size,
      [](const GradationPoint& point, Length sought) { return point.size < sought; });
  if (upper == points.end()) return points.back().percent_smaller;
  if (upper == points.begin()) return upper->percent_smaller;
  const GradationPoint& a = *(upper - 1);
  const GradationPoint& b = *upper;
  const double share = std::log(size / a.size) / std::log(b.size / a.size);
  return a.percent_smaller + share * (b.percent_smaller - a.percent_smaller);
}

std::optional<Length> size_on_curve(const CurvePoints& points, double percent) {
  if (!(percent >= points.front().percent_smaller)) return std::nullopt;  // also NaN
  const auto upper = std::lower_bound(
      points.begin(), points.end(), percent,
      [](const GradationPoint& point, double sought) { return point.percent_smaller < sought; });
  if (upper == points.end()) return std::nullopt;
  if (upper == points.begin()) return upper->size;
  const GradationPoint& a = *(upper - 1);
  const GradationPoint& b = *upper;
  const double share = (percent - a.percent_smaller) / (b.percent_smaller - a.percent_smaller);
  return a.size * std::pow(b.size / a.size, share);
}

}  // namespace proofstone
