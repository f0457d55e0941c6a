#include "engine/evidence/blend.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

#include "engine/evidence/band_comparison.h"
#include "engine/evidence/size_margin.h"
#include "engine/evidence/size_text.h"
#include "engine/evidence/weighted_curve.h"

namespace proofstone {
namespace {

constexpr int largest_most_loads = 50;

bool is_by_mass(const GradationBand& band) {
  const auto& conditions = band.conditions();
  return std::all_of(conditions.begin(), conditions.end(), [&](const BandCondition& condition) {
    return percent_of(condition, band.basis()) == PercentOf::mass;
  });
}

Problems problems_of_question(const GradationBand* band, double percent, Length required,
                              int most_loads) {
  Problems problems = problems_of_requirement(percent, required);
  if (most_loads < 2 || most_loads > largest_most_loads) {
    problems.push_back({"loads-out-of-range", fmt::format("{} loads make no blend.", most_loads),
                        "", "most loads", fmt::format("2 to {}", largest_most_loads)});
  }
  if (band != nullptr && !is_by_mass(*band)) {
    problems.push_back({"different-basis",
                        "The band is stated by count; a blend is known by mass only.", "", "band",
                        "a band by mass"});
  }
  return problems;
}

BlendOption option_of(Gradation mixed, int of_this, int of_other, const GradationBand* band,
                      double percent, Length required) {
  BlendOption option{of_this, of_other, std::move(mixed), true, {}, std::nullopt};
  if (band != nullptr) {
    for (const auto& condition : band->conditions()) {
      if (!kept_by_estimate(option.gradation, condition, band->basis().size)) {
        option.broken.push_back(condition.wording);
      }
    }
    option.keeps_band = option.broken.empty();
  }
  if (const auto size = option.gradation.size_at(percent)) option.margin = *size / required;
  return option;
}

/// 0 for those that hold, 1 for those that keep the band, 2 for the others.
int rank_of(const BlendOption& option) {
  if (option.holds()) return 0;
  return option.keeps_band ? 1 : 2;
}

double share_of_other(const BlendOption& option) {
  return static_cast<double>(option.loads_of_other) /
         (option.loads_of_this_rock + option.loads_of_other);
}

/// What keeps every ratio from holding, in one sentence.
std::string what_blocks(const std::vector<BlendOption>& options, double percent, Length required) {
  const auto size_name =
      fmt::format("D{:g} of at least {}", percent, size_in_both_systems(required));
  std::map<std::string, std::size_t> times;
  for (const auto& option : options) {
    for (const auto& wording : option.broken) ++times[wording];
    if (!option.reaches_size()) ++times[size_name];
  }
  std::string always;
  for (const auto& [wording, count] : times) {
    if (count != options.size()) continue;
    always += (always.empty() ? "" : "; ") + wording;
  }
  if (!always.empty()) return "No ratio reaches: " + always + ".";
  const auto nearest = std::min_element(
      options.begin(), options.end(), [](const BlendOption& a, const BlendOption& b) {
        const auto misses = [](const BlendOption& option) {
          return option.broken.size() + (option.reaches_size() ? 0 : 1);
        };
        return misses(a) < misses(b);
      });
  std::string missed = fmt::format("{}", fmt::join(nearest->broken, "; "));
  if (!nearest->reaches_size()) missed += (missed.empty() ? "" : "; ") + size_name;
  return fmt::format("Each ratio misses something; {}:{}, the nearest, misses: {}.",
                     nearest->loads_of_this_rock, nearest->loads_of_other, missed);
}

}  // namespace

Expected<Gradation> blend(const std::vector<BlendPart>& parts) {
  return weighted_curve(parts, "material");
}

Expected<std::vector<BlendOption>> two_pile_blends(const Gradation& this_rock,
                                                   const Gradation& other,
                                                   const GradationBand* band, double percent,
                                                   Length required, int most_loads) {
  if (auto problems = problems_of_question(band, percent, required, most_loads);
      !problems.empty()) {
    return problems;
  }
  std::vector<BlendOption> options;
  for (int loads = 2; loads <= most_loads; ++loads) {
    for (int of_other = 1; of_other < loads; ++of_other) {
      const int of_this = loads - of_other;
      if (std::gcd(of_this, of_other) != 1) continue;
      auto mixed = blend(
          {{this_rock, static_cast<double>(of_this)}, {other, static_cast<double>(of_other)}});
      if (!mixed) return mixed.problems();
      options.push_back(option_of(std::move(*mixed), of_this, of_other, band, percent, required));
    }
  }
  std::sort(options.begin(), options.end(), [](const BlendOption& a, const BlendOption& b) {
    const int rank_a = rank_of(a);
    const int rank_b = rank_of(b);
    return rank_a != rank_b ? rank_a < rank_b : share_of_other(a) < share_of_other(b);
  });
  if (!options.front().holds()) {
    return Problem{"no-blend-serves",
                   fmt::format("No blend of up to {} loads serves. {}", most_loads,
                               what_blocks(options, percent, required)),
                   "", "", "another material, or a thicker layer of a class that the rock meets"};
  }
  return options;
}

}  // namespace proofstone
