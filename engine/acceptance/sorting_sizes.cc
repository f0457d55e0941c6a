#include "engine/acceptance/sorting_sizes.h"

#include <algorithm>
#include <cmath>

namespace proofstone {
namespace {

constexpr double below_smallest = 0.5;
constexpr double beyond_largest = 1.25;
constexpr double most_bins = 11;

/// Sizes in whole steps, the finest that keeps the bins few enough to be pressed. Empty where the
/// first of them would hold more than what lies below the smallest size.
std::vector<double> even_sizes(double from, double to, const std::vector<double>& steps) {
  for (const double step : steps) {
    if ((to - from) / step > most_bins) continue;
    if (step >= from / below_smallest) break;
    std::vector<double> sizes;
    const int last = static_cast<int>(std::ceil(to / step));
    for (int i = std::max(1, static_cast<int>(std::floor(from / step))); i <= last; ++i) {
      sizes.push_back(i * step);
    }
    return sizes;
  }
  return {};
}

/// Sizes of `series` that enfold what lies between, for a band too wide for even steps.
std::vector<double> growing_sizes(double from, double to, const std::vector<double>& series) {
  std::vector<double> sizes;
  for (std::size_t i = 0; i < series.size(); ++i) {
    const bool next_is_below = i + 1 < series.size() && series[i + 1] <= from;
    if (next_is_below) continue;
    sizes.push_back(series[i]);
    if (series[i] >= to) break;
  }
  return sizes;
}

/// Numbers of inches or millimetres.
struct Scale {
  std::vector<double> steps;
  std::vector<double> series;
};

std::vector<double> round_sizes(double smallest, double largest, const Scale& scale) {
  const double from = smallest * below_smallest;
  const double to = largest * beyond_largest;
  auto sizes = even_sizes(from, to, scale.steps);
  return sizes.empty() ? growing_sizes(from, to, scale.series) : sizes;
}

std::vector<Length> between(Length smallest, Length largest, UnitSystem units) {
  std::vector<Length> sizes;
  if (units == UnitSystem::us_customary) {
    const Scale scale{{0.25, 0.5, 1, 2, 3, 6, 12, 24},
                      {0.125, 0.25, 0.5, 1, 2, 3, 4, 6, 9, 12, 18, 24, 36, 48, 72, 96, 144, 192}};
    for (const double size : round_sizes(smallest.inches(), largest.inches(), scale)) {
      sizes.push_back(Length::inches(size));
    }
  } else {
    const Scale scale{
        {5, 10, 20, 25, 50, 75, 100, 150, 250, 500},
        {3, 6, 12, 25, 50, 75, 100, 150, 225, 300, 450, 600, 900, 1200, 1800, 2400, 3600, 4800}};
    for (const double size : round_sizes(smallest.millimeters(), largest.millimeters(), scale)) {
      sizes.push_back(Length::millimeters(size));
    }
  }
  return sizes;
}

}  // namespace

std::vector<Length> sorting_sizes(const GradationBand& band, UnitSystem units) {
  const auto& conditions = band.conditions();
  if (conditions.empty()) return {};
  Length smallest = conditions.front().size;
  Length largest = smallest;
  for (const auto& condition : conditions) {
    smallest = std::min(smallest, condition.size);
    largest = std::max(largest, condition.size);
  }
  return between(smallest, largest, units);
}

}  // namespace proofstone
