#include "report/axis_ticks.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace proofstone {

namespace {

/// `count` steps of `digit`·10^exponent as plain decimal text.
std::string tick_label(long long count, int digit, int exponent) {
  const long long whole = count * digit;
  if (exponent >= 0) {
    std::string text = std::to_string(whole);
    if (whole != 0) text.append(static_cast<std::size_t>(exponent), '0');
    return text;
  }
  const double value = static_cast<double>(whole) / std::pow(10.0, -exponent);
  return fmt::format("{:.{}f}", value, -exponent);
}

}  // namespace

std::vector<AxisTick> even_ticks(double low, double high, int most) {
  std::vector<AxisTick> ticks;
  if (!std::isfinite(low) || !std::isfinite(high) || !(high > low) || most < 1) return ticks;
  const double smallest_step = (high - low) / most;
  int exponent = static_cast<int>(std::floor(std::log(smallest_step) / std::log(10.0)));
  if (exponent < -6 || exponent > 9) return ticks;
  int digit = 0;
  double step = 0;
  for (int i = 0; step < smallest_step * (1 - 1e-9); ++i) {
    constexpr int digits[] = {1, 2, 5};
    digit = digits[i % 3];
    if (i > 0 && i % 3 == 0) ++exponent;
    step = digit * std::pow(10.0, exponent);
  }
  // A range far from zero compared with its length has no ticks that doubles could tell apart.
  if (std::abs(low) > 1e9 * step || std::abs(high) > 1e9 * step) return ticks;
  const auto first = static_cast<long long>(std::ceil(low / step - 1e-9));
  const auto last = static_cast<long long>(std::floor(high / step + 1e-9));
  for (long long i = first; i <= last; ++i) {
    ticks.push_back({static_cast<double>(i) * step, tick_label(i, digit, exponent), 0});
  }
  return ticks;
}

std::vector<AxisTick> stone_size_ticks(double low, double high, UnitSystem units) {
  // By rank: the sizes named first, then those between.
  static const std::vector<std::vector<double>> inches{
      {0.1, 0.5, 1, 3, 6, 12, 24, 48, 120}, {0.2, 2, 4, 9, 18, 36, 72, 240}, {15, 30, 60, 96, 180}};
  static const std::vector<std::vector<double>> millimeters{{1, 10, 100, 200, 500, 1000, 2000},
                                                            {2, 5, 20, 50, 150, 300, 5000},
                                                            {75, 400, 600, 800, 1500, 3000}};
  std::vector<AxisTick> ticks;
  int rank = 0;
  for (const auto& sizes : units == UnitSystem::si ? millimeters : inches) {
    for (const double value : sizes) {
      if (value < low * (1 - 1e-9) || value > high * (1 + 1e-9)) continue;
      ticks.push_back({value, fmt::format("{}", value), rank});
    }
    ++rank;
  }
  std::sort(ticks.begin(), ticks.end(),
            [](const AxisTick& a, const AxisTick& b) { return a.value < b.value; });
  return ticks;
}

const Unit& stone_size_unit(UnitSystem units) {
  return units == UnitSystem::si ? unit::millimeter : unit::inch;
}

const Unit& ground_unit(UnitSystem units) {
  return units == UnitSystem::si ? unit::meter : unit::foot;
}

}  // namespace proofstone
