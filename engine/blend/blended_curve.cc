#include "engine/blend/blended_curve.h"

#include <algorithm>

namespace proofstone {

std::vector<GradationPoint> blended_curve(const std::vector<OfferedMaterial>& materials,
                                          const std::vector<double>& shares) {
  const std::size_t known = std::min(materials.size(), shares.size());
  std::vector<Length> sizes;
  for (std::size_t i = 0; i < known; ++i) {
    if (!(shares[i] > 0)) continue;
    for (const auto& point : materials[i].gradation.points()) sizes.push_back(point.size);
  }
  std::sort(sizes.begin(), sizes.end());
  std::vector<GradationPoint> curve;
  for (const Length size : sizes) {
    // Sizes that differ by rounding alone are one.
    if (!curve.empty() && size.meters() <= curve.back().size.meters() * (1 + 1e-9)) continue;
    double percent = 0;
    for (std::size_t i = 0; i < known; ++i) {
      if (shares[i] > 0) percent += shares[i] * materials[i].gradation.percent_smaller(size);
    }
    curve.push_back({size, std::clamp(percent, 0.0, 100.0)});
  }
  return curve;
}

}  // namespace proofstone
