// Counts of stones to a curve by mass: gradation_from_bins and gradation_from_stones.
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "engine/evidence/effective_stones.h"
#include "engine/evidence/evidence_sources.h"
#include "engine/evidence/measured_gradation.h"
#include "engine/evidence/reading_error.h"
#include "engine/evidence/sample_curve.h"
#include "engine/evidence/size_ranges.h"
#include "engine/evidence/size_text.h"

namespace proofstone {
namespace {

constexpr int most_stones_in_bin = 1'000'000;
constexpr GradationBasis measured_basis{SizeMeaning::intermediate_axis, PercentOf::mass};

/// Power of the size that turns a count into a share of the mass.
double mass_exponent(StonePicking picking) {
  switch (picking) {
    case StonePicking::grid:
      return 0;
    case StonePicking::line:
      return 1;
    case StonePicking::area:
      return 2;
    case StonePicking::whole:
      return 3;
  }
  return 0;
}

std::string picking_text(StonePicking picking) {
  switch (picking) {
    case StonePicking::grid:
      return "stone count on a grid";
    case StonePicking::line:
      return "count of all stones along a line";
    case StonePicking::area:
      return "count of all stones on a face";
    case StonePicking::whole:
      return "count of all stones of a load";
  }
  return {};
}

double weight_of(Length size, StonePicking picking) {
  return std::pow(size.meters(), mass_exponent(picking));
}

/// The size that stands for a bin. An open smallest bin is taken to begin at half its upper size.
Length middle_of(const CountBin& bin, MidSize mid_size) {
  const double upper = bin.upper.meters();
  const double lower = lower_or_half({bin.lower, bin.upper}).meters();
  return Length::meters(mid_size == MidSize::geometric ? std::sqrt(lower * upper)
                                                       : (lower + upper) / 2);
}

Problems problems_of_counts(const std::vector<CountBin>& bins) {
  Problems problems;
  bool any = false;
  for (std::size_t i = 0; i < bins.size(); ++i) {
    const auto where = fmt::format("bin {}", i + 1);
    if (bins[i].stones < 0) {
      problems.push_back({"negative-count", fmt::format("It has {} stones.", bins[i].stones), "",
                          where, "0 or more stones"});
    } else if (bins[i].stones > most_stones_in_bin) {
      problems.push_back({"count-too-large",
                          fmt::format("Nobody counted {} stones.", bins[i].stones), "", where,
                          fmt::format("at most {} stones", most_stones_in_bin)});
    }
    any = any || bins[i].stones > 0;
  }
  if (problems.empty() && !any) {
    problems.push_back({"no-stones", "No bin holds a stone.", "", "", "at least one stone"});
  }
  return problems;
}

void describe_picking(MeasuredGradation& measured, StonePicking picking) {
  measured.method = picking_text(picking);
  measured.picked_on_grid = picking == StonePicking::grid;
  measured.steps.given("n", "stones counted", measure(static_cast<double>(measured.stones)));
  measured.steps.given(
      "m",
      "power of the size by which a count becomes a share of the mass: " + picking_text(picking),
      measure(mass_exponent(picking)), kellerhals_bray_source().sentence());
}

void say_effective_stones(MeasuredGradation& measured, StonePicking picking) {
  measured.steps.computed("ne", "equally informative stones, with w = D^m of each stone",
                          "(Σ w)² / Σ w²", measure(measured.effective_stones),
                          "Kish 1965 (from memory)");
  if (picking == StonePicking::grid) return;
  const double kept = measured.effective_stones;
  if (kept < 0.75 * measured.stones) {
    measured.cautions.push_back(fmt::format(
        "The large stones weigh most: the {} stones counted speak for only {:.0f} equal ones, and "
        "for fewer at the coarse end. A count on a grid needs no such conversion.",
        measured.stones, kept));
  }
  if (kept < 20) {
    measured.cautions.push_back(
        "With fewer than 20 equal stones behind a count converted to mass, its confidence limits "
        "are rough.");
  }
}

}  // namespace

Expected<MeasuredGradation> gradation_from_bins(const std::vector<CountBin>& bins,
                                                StonePicking picking, MidSize mid_size) {
  std::vector<SizeRange> ranges;
  ranges.reserve(bins.size());
  for (const auto& bin : bins) ranges.push_back({bin.lower, bin.upper});
  auto order = order_of_ranges(std::move(ranges), "bin");
  if (!order) return order.problems();
  if (auto problems = problems_of_counts(bins); !problems.empty()) return problems;

  std::vector<SampleRange> sample;
  int stones = 0;
  for (const auto i : *order) {
    const Length middle = middle_of(bins[i], mid_size);
    sample.push_back({{bins[i].lower, bins[i].upper},
                      {static_cast<double>(bins[i].stones), weight_of(middle, picking)},
                      fmt::format("bin {}", i + 1)});
    stones += bins[i].stones;
  }
  auto measured = curve_of_ranges(sample, measured_basis, "bin", mass_exponent(picking));
  if (!measured) return measured.problems();
  measured->stones = stones;
  describe_picking(*measured, picking);

  const auto& points = measured->curve.points();
  const std::size_t first = points.size() - sample.size();
  for (std::size_t k = 0; k < sample.size(); ++k) {
    const auto& bin = bins[(*order)[k]];
    measured->steps.computed(
        fmt::format("F{}", k + 1),
        fmt::format("percent smaller than {} by mass; {} stones of {}, middle size {}",
                    size_in_both_systems(bin.upper), bin.stones, sample[k].name,
                    size_in_both_systems(middle_of(bin, mid_size))),
        mid_size == MidSize::geometric ? "100·Σ n·D^m up to here / Σ n·D^m, D = √(lower·upper)"
                                       : "100·Σ n·D^m up to here / Σ n·D^m, D = (lower + upper)/2",
        measure(points[first + k].percent_smaller));
  }
  say_effective_stones(*measured, picking);
  say_percentiles(*measured);
  if (sample.front().stones.stones > 0 && !has_lower(sample.front().range) &&
      picking != StonePicking::grid) {
    measured->cautions.push_back(fmt::format(
        "For the share of the mass, stones smaller than {} were taken as between half that size "
        "and it.",
        size_in_both_systems(sample.front().range.upper)));
  }
  caution_few_stones(*measured);
  return measured;
}

Expected<MeasuredGradation> gradation_from_stones(const std::vector<Length>& intermediate_axes,
                                                  StonePicking picking) {
  Problems problems;
  constexpr std::size_t most_problems = 20;
  for (std::size_t i = 0; i < intermediate_axes.size() && problems.size() < most_problems; ++i) {
    if (auto problem = problem_of_size(intermediate_axes[i], fmt::format("stone {}", i + 1))) {
      problems.push_back(std::move(*problem));
    }
  }
  if (!problems.empty()) return problems;
  if (intermediate_axes.empty()) {
    return Problem{"no-stones", "No stone was measured.", "", "", "at least one stone"};
  }
  if (intermediate_axes.size() > most_stones_in_bin) {
    return Problem{"count-too-large",
                   fmt::format("Nobody measured {} stones.", intermediate_axes.size()), "", "",
                   fmt::format("at most {} stones", most_stones_in_bin)};
  }

  std::vector<Length> sorted = intermediate_axes;
  std::sort(sorted.begin(), sorted.end());
  std::vector<Length> sizes;
  std::vector<WeightedStones> groups;
  for (const Length size : sorted) {
    // Readings a few parts in a million apart are the same reading after a unit conversion.
    if (sizes.empty() || (size - sizes.back()) / size > 4 * step_width) {
      sizes.push_back(size);
      groups.push_back({0, weight_of(size, picking)});
    }
    groups.back().stones += 1;
  }

  const auto effective = effective_stones(groups, 0.5);
  double total = 0;
  for (const auto& group : groups) total += group.stones * group.weight;
  std::vector<GradationPoint> points{{(1 - step_width) * sizes.front(), 0}};
  // At its ends the curve leaves the whole of a reading on one side.
  std::vector<double> at_points{effective_stones(groups, 0).at_points.front()};
  double below = 0;
  for (std::size_t k = 0; k < sizes.size(); ++k) {
    const double own = groups[k].stones * groups[k].weight;
    points.push_back({sizes[k], std::min(100.0, 100 * (below + own / 2) / total)});
    at_points.push_back(effective.at_points[k]);
    below += own;
  }
  points.push_back({(1 + step_width) * sizes.back(), 100});
  at_points.push_back(effective_stones(groups, 1).at_points.back());

  auto curve = Gradation::make(std::move(points), measured_basis);
  if (!curve) return curve.problems();
  MeasuredGradation measured{std::move(*curve)};
  measured.effective_stones = effective.overall;
  measured.effective_at_points = std::move(at_points);
  std::vector<double> stones;
  for (const auto& group : groups) stones.push_back(group.stones);
  measured.reading_errors =
      reading_errors(ranges_of_readings(sizes, stones), mass_exponent(picking), measured.curve);
  measured.stones = static_cast<int>(intermediate_axes.size());
  measured.seen_larger_than = (1 - step_width) * sizes.back();
  measured.seen_smaller_than = (1 + step_width) * sizes.front();
  describe_picking(measured, picking);
  measured.steps.given_rock("b min", "smallest intermediate axis", sizes.front());
  measured.steps.given_rock("b max", "largest intermediate axis", sizes.back());
  measured.steps.given("k", "different sizes; at each, F = 100·(Σ w smaller + ½·Σ w equal) / Σ w",
                       measure(static_cast<double>(sizes.size())));
  say_effective_stones(measured, picking);
  say_percentiles(measured);
  caution_few_stones(measured);
  caution_repeated_readings(measured, intermediate_axes);
  return measured;
}

}  // namespace proofstone
