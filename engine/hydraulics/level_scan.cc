#include "engine/hydraulics/level_scan.h"

#include <algorithm>
#include <utility>

namespace proofstone {

std::vector<double> scan_levels(const Section& section, double ceiling) {
  constexpr std::size_t wanted_levels = 400;
  std::vector<double> breaks;
  for (const SectionPoint& point : section.points()) {
    if (point.elevation.meters() < ceiling) breaks.push_back(point.elevation.meters());
  }
  breaks.push_back(ceiling);
  return levels_between(std::move(breaks), wanted_levels);
}

std::vector<double> levels_between(std::vector<double> breaks, std::size_t wanted) {
  std::sort(breaks.begin(), breaks.end());
  breaks.erase(
      std::unique(breaks.begin(), breaks.end(), [](double a, double b) { return b - a < 1e-9; }),
      breaks.end());
  if (breaks.size() < 2) return {};
  // Thousands of survey points stand closer than the scan needs; keep an even selection.
  const std::size_t stride = 1 + (breaks.size() - 2) / wanted;
  std::vector<double> levels;
  const std::size_t intervals = (breaks.size() - 1 + stride - 1) / stride;
  const std::size_t in_each = std::clamp<std::size_t>(wanted / intervals, 4, 48);
  for (std::size_t i = 0; i + 1 < breaks.size(); i += stride) {
    const double from = breaks[i];
    const double to = breaks[std::min(i + stride, breaks.size() - 1)];
    levels.push_back(from + 1e-6 * (to - from));
    for (std::size_t j = 1; j < in_each; ++j) {
      const double share = static_cast<double>(j) / static_cast<double>(in_each);
      levels.push_back(from + share * share * (to - from));
    }
    levels.push_back(to);
  }
  return levels;
}

}  // namespace proofstone
