#include "engine/acceptance/sorting_sizes.h"

#include <algorithm>
#include <cmath>

namespace proofstone {
namespace {

constexpr double below_smallest = 0.5;
constexpr double beyond_largest = 1.25;
constexpr double most_bins = 11;

/// Sizes in whole steps, the finest that keeps the bins few enough to be pressed.
std::vector<double> round_sizes(double smallest, double largest, const std::vector<double>& steps) {
  const double from = smallest * below_smallest;
  const double to = largest * beyond_largest;
  double step = steps.back();
  for (const double one : steps) {
    if ((to - from) / one <= most_bins) {
      step = one;
      break;
    }
  }
  const int first = std::max(1, static_cast<int>(std::floor(from / step)));
  const int last = std::max(first + 1, static_cast<int>(std::ceil(to / step)));
  std::vector<double> sizes;
  for (int i = first; i <= last; ++i) sizes.push_back(i * step);
  return sizes;
}

std::vector<Length> between(Length smallest, Length largest, UnitSystem units) {
  std::vector<Length> sizes;
  if (units == UnitSystem::us_customary) {
    const std::vector<double> steps{0.25, 0.5, 1, 2, 3, 6, 12, 24};
    for (const double size : round_sizes(smallest.inches(), largest.inches(), steps)) {
      sizes.push_back(Length::inches(size));
    }
  } else {
    const std::vector<double> steps{5, 10, 20, 25, 50, 75, 100, 150, 250, 500};
    for (const double size : round_sizes(smallest.millimeters(), largest.millimeters(), steps)) {
      sizes.push_back(Length::millimeters(size));
    }
  }
  return sizes;
}

}  // namespace

std::vector<Length> sorting_sizes(const GradationBand& band, UnitSystem units) {
  const auto& conditions = band.conditions();
  Length smallest = conditions.front().size;
  Length largest = smallest;
  for (const auto& condition : conditions) {
    smallest = std::min(smallest, condition.size);
    largest = std::max(largest, condition.size);
  }
  return between(smallest, largest, units);
}

}  // namespace proofstone
