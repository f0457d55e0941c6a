#include "engine/evidence/sample_curve.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "engine/evidence/reading_error.h"
#include "engine/evidence/size_text.h"

namespace proofstone {
namespace {

constexpr double wide_ratio = 2;
constexpr double wide_percent = 10;
constexpr int usual_count = 100;

bool same_reading(Length a, Length b) { return std::abs((a - b) / b) < 4 * step_width; }

void caution_ranges(MeasuredGradation& measured, const std::vector<SampleRange>& sample,
                    double total) {
  for (const auto& part : sample) {
    const auto& range = part.range;
    const Length lower = range.lower.value_or(Length{});
    const double percent = 100 * part.stones.stones * part.stones.weight / total;
    if (lower.si() <= 0) {
      if (percent > 0) {
        measured.cautions.push_back(fmt::format(
            "{:.1f} % by mass is smaller than {} and how small is not known: nothing is "
            "said below that size.",
            percent, size_in_both_systems(range.upper)));
      }
    } else if (percent > wide_percent && range.upper / lower > wide_ratio * 1.01) {
      measured.cautions.push_back(fmt::format(
          "{:.0f} % lies in {}, which is wide ({} to {}): sizes within it are read off a "
          "straight line, not measured.",
          percent, part.name, size_in_both_systems(lower), size_in_both_systems(range.upper)));
    }
  }
}

/// Effective stones behind shares read at the quarters of every range. The errors of reading begin
/// at the lower edge of the first range, or at the upper one where that is open.
void put_stones_between_edges(const std::vector<WeightedStones>& groups,
                              std::vector<ReadingError>& errors) {
  constexpr double quarters[] = {0.25, 0.5, 0.75, 1};
  std::vector<double> stones;
  std::vector<std::vector<double>> at_quarter;
  for (const double part : quarters) {
    at_quarter.push_back(effective_stones(groups, part).at_points);
  }
  stones.push_back(at_quarter.front().front());
  for (std::size_t k = 0; k < groups.size(); ++k) {
    for (const auto& at_points : at_quarter) stones.push_back(at_points[k]);
  }
  const std::size_t skipped = stones.size() - errors.size();
  for (std::size_t i = 0; i < errors.size(); ++i) errors[i].stones = stones[skipped + i];
}

}  // namespace

bool has_lower(const SizeRange& range) { return range.lower && range.lower->si() > 0; }

Length lower_or_half(const SizeRange& range) {
  return has_lower(range) ? *range.lower : 0.5 * range.upper;
}

Expected<MeasuredGradation> curve_of_ranges(const std::vector<SampleRange>& sample,
                                            GradationBasis basis, const std::string& word,
                                            double exponent) {
  double total = 0;
  std::vector<WeightedStones> groups;
  for (const auto& part : sample) {
    total += part.stones.stones * part.stones.weight;
    groups.push_back(part.stones);
  }
  const auto effective = effective_stones(groups, 1);

  std::vector<GradationPoint> points;
  std::vector<double> at_points;
  if (const Length lower = sample.front().range.lower.value_or(Length{}); lower.si() > 0) {
    points.push_back({lower, 0});
    at_points.push_back(effective.at_points.front());
  }
  double sum = 0;
  for (std::size_t k = 0; k < sample.size(); ++k) {
    sum += groups[k].stones * groups[k].weight;
    const bool last = k + 1 == sample.size();
    points.push_back({sample[k].range.upper, last ? 100 : std::min(100.0, 100 * sum / total)});
    at_points.push_back(effective.at_points[k]);
  }
  if (points.size() < 2) {
    return Problem{"too-few", "One " + word + " without a lower size makes no curve.", "",
                   sample.front().name, "a lower size, or a second " + word};
  }
  auto curve = Gradation::make(std::move(points), basis);
  if (!curve) return curve.problems();

  MeasuredGradation measured{std::move(*curve)};
  measured.effective_stones = effective.overall;
  measured.effective_at_points = std::move(at_points);
  double handled = 0;
  for (const auto& group : groups) handled += group.stones;
  std::vector<CountedRange> ranges;
  for (const auto& part : sample) {
    // Weighed groups hold their share of the mass for certain, whatever one of their stones weighs.
    const double stones = exponent > 0 ? part.stones.stones
                                       : part.stones.stones * part.stones.weight / total * handled;
    ranges.push_back({lower_or_half(part.range), part.range.upper, stones});
  }
  measured.reading_errors = reading_errors(ranges, exponent, measured.curve);
  put_stones_between_edges(groups, measured.reading_errors);
  for (const auto& part : sample) {
    if (!(part.stones.stones > 0)) continue;
    // A stone may be just as large as the upper size, so it is smaller only than what lies above.
    if (!measured.seen_smaller_than) {
      measured.seen_smaller_than = (1 + step_width) * part.range.upper;
    }
    if (has_lower(part.range)) measured.seen_larger_than = part.range.lower;
  }
  caution_ranges(measured, sample, total);
  return measured;
}

void say_percentiles(MeasuredGradation& measured) {
  for (const int percent : {15, 50, 85}) {
    if (const auto size = measured.curve.size_at(percent)) {
      measured.steps.computed_rock(fmt::format("D{}", percent),
                                   fmt::format("size of which {} % by mass is smaller", percent),
                                   "straight in log D between the points of the curve", *size);
    }
  }
}

void caution_few_stones(MeasuredGradation& measured) {
  if (measured.stones >= usual_count || measured.stones == 0) return;
  measured.cautions.push_back(fmt::format(
      "{} {} {} handled; a count of 100 is usual.", measured.stones,
      measured.stones == 1 ? "stone" : "stones", measured.stones == 1 ? "was" : "were"));
}

void caution_repeated_readings(MeasuredGradation& measured, const std::vector<Length>& readings) {
  const std::size_t n = readings.size();
  if (n >= 20 && n % 2 == 0 &&
      std::equal(readings.begin(), readings.begin() + static_cast<std::ptrdiff_t>(n / 2),
                 readings.begin() + static_cast<std::ptrdiff_t>(n / 2), same_reading)) {
    measured.cautions.push_back(
        fmt::format("The last {} readings repeat the first {} one by one: were they entered twice?",
                    n / 2, n / 2));
  }
  std::size_t run = 1;
  std::size_t longest = 1;
  std::size_t longest_end = 0;
  for (std::size_t i = 1; i < n; ++i) {
    run = same_reading(readings[i], readings[i - 1]) ? run + 1 : 1;
    if (run > longest) {
      longest = run;
      longest_end = i;
    }
  }
  if (longest >= 10) {
    measured.cautions.push_back(fmt::format("Stones {} to {} have the same reading {}: check them.",
                                            longest_end + 2 - longest, longest_end + 1,
                                            size_in_both_systems(readings[longest_end])));
  }
  std::vector<Length> sorted = readings;
  std::sort(sorted.begin(), sorted.end());
  std::size_t equal = 0;
  std::size_t most = 0;
  for (std::size_t i = 0; i < n; ++i) {
    equal = i > 0 && same_reading(sorted[i], sorted[i - 1]) ? equal + 1 : 1;
    most = std::max(most, equal);
  }
  if (n >= 20 && 3 * most > n) {
    measured.cautions.push_back(fmt::format(
        "{} of {} readings are equal: read to a finer step, or count in bins.", most, n));
  }
}

}  // namespace proofstone
