#include "engine/soil/soil_curve.h"

#include <algorithm>

#include "engine/quantity/rounding.h"

namespace proofstone {
namespace {

constexpr double gap_share = 5;
constexpr double least_gap_ratio = 3;
constexpr double lowest_percent = 10;
constexpr double highest_percent = 90;

}  // namespace

std::optional<double> known_percent(const CurvePoints& curve, Length size) {
  const auto& first = curve.front();
  const auto& last = curve.back();
  if (size < first.size && first.percent_smaller > rounding) return std::nullopt;
  if (size > last.size && last.percent_smaller < 100 - rounding) return std::nullopt;
  return percent_on_curve(curve, size);
}

std::optional<double> uniformity(const CurvePoints& curve) {
  const auto d10 = size_on_curve(curve, 10);
  const auto d60 = size_on_curve(curve, 60);
  if (!d10 || !d60) return std::nullopt;
  return *d60 / *d10;
}

std::optional<double> curvature(const CurvePoints& curve) {
  const auto d10 = size_on_curve(curve, 10);
  const auto d30 = size_on_curve(curve, 30);
  const auto d60 = size_on_curve(curve, 60);
  if (!d10 || !d30 || !d60) return std::nullopt;
  return (*d30 / *d10) * (*d30 / *d60);
}

std::optional<SizeGap> size_gap(const CurvePoints& curve) {
  std::optional<SizeGap> widest;
  for (const auto& point : curve) {
    const double percent = point.percent_smaller;
    if (percent < lowest_percent || percent + gap_share > highest_percent) continue;
    // The largest size that adds less than the share: where the curve reaches it.
    const auto end = size_on_curve(curve, percent + gap_share);
    if (!end) continue;
    const SizeGap gap{point.size, *end};
    if (gap.ratio() >= least_gap_ratio && (!widest || gap.ratio() > widest->ratio())) widest = gap;
  }
  return widest;
}

bool look_retained(const CurvePoints& points) {
  if (points.size() < 2) return false;
  const bool rising = points.front().size <= points.back().size;
  bool any_fall = false;
  for (std::size_t i = 1; i < points.size(); ++i) {
    const auto& smaller = rising ? points[i - 1] : points[i];
    const auto& larger = rising ? points[i] : points[i - 1];
    if (smaller.percent_smaller < larger.percent_smaller) return false;
    any_fall = any_fall || smaller.percent_smaller > larger.percent_smaller;
  }
  return any_fall;
}

}  // namespace proofstone
