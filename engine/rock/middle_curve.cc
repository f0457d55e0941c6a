#include "engine/rock/middle_curve.h"

#include <cmath>

namespace proofstone {

Expected<Gradation> middle_curve(const GradationBand& band) {
  std::vector<GradationPoint> points;
  for (const double percent : {0.0, 2.0, 5.0, 10.0, 15.0, 30.0, 50.0, 70.0, 85.0, 100.0}) {
    const auto small = band.smallest_size_at(percent);
    const auto large = band.largest_size_at(percent);
    Length size;
    if (small && large) {
      size = Length::from_si(std::sqrt(small->si() * large->si()));
    } else if (small) {
      size = *small;
    } else if (large) {
      size = *large;
    } else {
      continue;
    }
    if (points.empty() || size > points.back().size) points.push_back({size, percent});
  }
  return Gradation::make(std::move(points), band.basis());
}

}  // namespace proofstone
