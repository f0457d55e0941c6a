#include "engine/blend/offered_material.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace proofstone {
namespace {

constexpr double same_size = 1e-9;  // relative

}  // namespace

Expected<Scalped> scalped(const Gradation& gradation, Length size) {
  const auto& points = gradation.points();
  if (!(std::isfinite(size.si()) && size.si() > 0)) {
    return Problem{"size-not-positive", "The size to scalp at is not above zero.", "", "",
                   "a size above zero"};
  }
  if (size < points.front().size) {
    return Problem{"outside-curve", "The curve does not reach down to the size to scalp at.", "",
                   "", "a size within the curve"};
  }
  if (size > points.back().size) {
    if (points.back().percent_smaller >= 100) return Scalped{gradation, 1};
    return Problem{"outside-curve", "The curve ends below the size to scalp at.", "", "",
                   "a size within the curve"};
  }
  const double passing = gradation.percent_smaller(size);
  if (!(passing > 0)) {
    return Problem{"nothing-left", "Nothing of this material is smaller than the size to scalp at.",
                   "", "", "a larger size"};
  }
  std::vector<GradationPoint> kept;
  for (const auto& point : points) {
    if ((size - point.size) / size > same_size) {
      kept.push_back({point.size, std::min(100.0, 100 * point.percent_smaller / passing)});
    }
  }
  kept.push_back({size, 100});
  auto curve = Gradation::make(std::move(kept), gradation.basis());
  if (!curve) return curve.problems();
  return Scalped{std::move(*curve), passing / 100};
}

Expected<std::vector<OfferedMaterial>> with_scalped(const std::vector<OfferedMaterial>& offered) {
  std::vector<OfferedMaterial> all;
  Problems problems;
  for (const auto& material : offered) {
    all.push_back(material);
    if (!material.scalp_at) continue;
    auto less = scalped(material.gradation, *material.scalp_at);
    if (!less) {
      for (auto problem : less.problems()) {
        problem.where = material.name;
        problems.push_back(std::move(problem));
      }
      continue;
    }
    if (less->kept > 1 - 1e-9) continue;  // nothing to take out: no other material
    OfferedMaterial other{material.id + "-scalped",
                          material.name + ", scalped",
                          std::move(less->gradation),
                          {},
                          {},
                          material.load,
                          {}};
    if (material.price_per_tonne) other.price_per_tonne = *material.price_per_tonne / less->kept;
    if (material.available) other.available = *material.available * less->kept;
    all.push_back(std::move(other));
  }
  if (!problems.empty()) return problems;
  return all;
}

}  // namespace proofstone
