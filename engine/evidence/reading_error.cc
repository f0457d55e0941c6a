#include "engine/evidence/reading_error.h"

#include <cmath>
#include <numeric>

#include "engine/evidence/confidence.h"
#include "engine/evidence/standard_normal.h"

namespace proofstone {
namespace {

constexpr int quarters = 4;
/// With fewer stones to a reading, what a curve between readings may be off is nothing beside their
/// scatter.
constexpr double stones_to_a_reading = 4;

/// Mass of the stones of one range up to each of its quarters, for a count that is straight on
/// log-probability paper within it.
struct QuarterMasses {
  double up_to[quarters + 1] = {};
};

QuarterMasses quarter_masses(const CountedRange& range, double z_low, double z_high,
                             double exponent, Length largest) {
  const double step = std::log(range.upper / range.lower) / (2 * quarters);
  const double z_step = (z_high - z_low) / (2 * quarters);
  const double lowest = std::log(range.lower / largest);
  double number[2 * quarters + 1];
  double mass[2 * quarters + 1];
  for (int i = 0; i <= 2 * quarters; ++i) {
    number[i] = normal_density(z_low + i * z_step);
    mass[i] = number[i] * std::exp(exponent * (lowest + i * step));
  }
  // Simpson's rule over each quarter; the number of stones in the range is known.
  QuarterMasses masses;
  double counted = 0;
  for (int quarter = 0; quarter < quarters; ++quarter) {
    const int i = 2 * quarter;
    counted += number[i] + 4 * number[i + 1] + number[i + 2];
    masses.up_to[quarter + 1] = masses.up_to[quarter] + mass[i] + 4 * mass[i + 1] + mass[i + 2];
  }
  for (double& sum : masses.up_to) sum *= range.stones / counted;
  return masses;
}

}  // namespace

std::vector<ReadingError> reading_errors(const std::vector<CountedRange>& ranges, double exponent,
                                         const Gradation& curve) {
  double all = 0;
  for (const auto& range : ranges) all += range.stones;
  if (ranges.empty() || !(all > 0)) return {};
  const auto quantile = [all](double stones) {
    return normal_quantile((stones + 0.5) / (all + 1));
  };

  std::vector<QuarterMasses> masses;
  masses.reserve(ranges.size());
  double below = 0;
  double z_low = quantile(0);
  double total = 0;
  for (const auto& range : ranges) {
    below = std::min(all, below + range.stones);
    const double z_high = quantile(below);
    masses.push_back(range.stones > 0
                         ? quarter_masses(range, z_low, z_high, exponent, ranges.back().upper)
                         : QuarterMasses{});
    total += masses.back().up_to[quarters];
    z_low = z_high;
  }

  const Length begin = curve.points().front().size;  // above an open smallest range
  std::vector<ReadingError> errors;
  if (ranges.front().lower >= begin) errors.push_back({ranges.front().lower, 0});
  double smaller = 0;
  for (std::size_t k = 0; k < ranges.size(); ++k) {
    const double ratio = ranges[k].upper / ranges[k].lower;
    for (int quarter = 1; quarter <= quarters; ++quarter) {
      const Length size =
          quarter == quarters
              ? ranges[k].upper
              : std::pow(ratio, static_cast<double>(quarter) / quarters) * ranges[k].lower;
      if (size < begin) continue;
      const double percent = 100 * (smaller + masses[k].up_to[quarter]) / total;
      errors.push_back({size, percent - curve.percent_smaller(size)});
    }
    smaller += masses[k].up_to[quarters];
  }
  return errors;
}

std::vector<CountedRange> ranges_of_readings(const std::vector<Length>& readings,
                                             const std::vector<double>& stones) {
  const double all = std::accumulate(stones.begin(), stones.end(), 0.0);
  const std::size_t n = readings.size();
  if (n < 2 || all < stones_to_a_reading * static_cast<double>(n)) return {};
  std::vector<CountedRange> ranges;
  ranges.reserve(n);
  for (std::size_t i = 0; i < n; ++i) {
    const Length down = i > 0 ? readings[i] - readings[i - 1] : readings[1] - readings[0];
    const Length up = i + 1 < n ? readings[i + 1] - readings[i] : down;
    const Length lower = std::max(readings[i] - 0.5 * down, 0.5 * readings[i]);
    ranges.push_back({i > 0 ? ranges.back().upper : lower, readings[i] + 0.5 * up, stones[i]});
  }
  return ranges;
}

}  // namespace proofstone
