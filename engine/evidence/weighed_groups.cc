// Weighed size ranges to a curve by mass: gradation_from_weighed.
#include <fmt/format.h>

#include <cmath>

#include "engine/evidence/evidence_sources.h"
#include "engine/evidence/measured_gradation.h"
#include "engine/evidence/sample_curve.h"
#include "engine/evidence/size_ranges.h"
#include "engine/evidence/size_text.h"
#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

constexpr Mass largest_believable_mass = Mass::tonnes(10'000);
constexpr int most_stones_in_group = 1'000'000;
/// For plausibility and for groups whose stones were not counted; no share depends on it.
constexpr Density common_rock = Density::kilograms_per_cubic_meter(2650);
constexpr double believable_ratio = 3;

std::string mass_in_both_systems(Mass mass) {
  return display(measure(mass), UnitSystem::us_customary).text + " (" +
         display(measure(mass), UnitSystem::si).text + ")";
}

Problems problems_of_masses(const std::vector<WeighedGroup>& groups) {
  Problems problems;
  bool any = false;
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const auto& group = groups[i];
    const auto where = fmt::format("group {}", i + 1);
    if (!std::isfinite(group.mass.si())) {
      problems.push_back({"not-a-number", "The mass is not a number.", "", where, "0 or more"});
    } else if (group.mass.si() < 0) {
      problems.push_back({"negative-mass",
                          fmt::format("The mass is {}.", mass_in_both_systems(group.mass)), "",
                          where, "0 or more"});
    } else if (group.mass > largest_believable_mass) {
      problems.push_back({"mass-too-large",
                          fmt::format("Nobody weighed {} stone by stone; the unit may be wrong.",
                                      mass_in_both_systems(group.mass)),
                          "", where, "up to " + mass_in_both_systems(largest_believable_mass)});
    }
    if (group.stones < 0 || group.stones > most_stones_in_group) {
      problems.push_back({"count-not-believable", fmt::format("It has {} stones.", group.stones),
                          "", where,
                          fmt::format("0 (not counted) to {} stones", most_stones_in_group)});
    } else if (group.stones > 0 && group.mass.si() <= 0) {
      problems.push_back({"missing-mass",
                          fmt::format("It has {} stones but no mass.", group.stones), "", where,
                          "the mass of the stones"});
    }
    any = any || group.mass.si() > 0;
  }
  if (problems.empty() && !any) {
    problems.push_back({"no-mass", "No group has any mass.", "", "", "at least one mass above 0"});
  }
  return problems;
}

Length middle_of(const WeighedGroup& group) {
  const double lower = lower_or_half({group.lower, group.upper}).meters();
  return Length::meters(std::sqrt(lower * group.upper.meters()));
}

/// Of the masses of stones spread evenly in log D from the lower to the upper size, as D³:
/// variance over the mean squared, h·coth(h) − 1 with h = 3/2·ln(upper/lower).
double scatter_in(const WeighedGroup& group) {
  const double h = 1.5 * std::log(group.upper / lower_or_half({group.lower, group.upper}));
  return h / std::tanh(h) - 1;
}

double stones_in(const WeighedGroup& group, SizeMeaning meaning) {
  if (group.stones > 0) return group.stones;
  return group.mass / stone_mass(middle_of(group), meaning, common_rock);
}

/// A mean stone that is far too heavy or too light for its sizes betrays a wrong unit.
std::optional<std::string> doubt_about_mean(const WeighedGroup& group, SizeMeaning meaning,
                                            const std::string& name) {
  if (group.stones == 0) return std::nullopt;
  const Mass mean = group.mass / group.stones;
  const Mass heaviest = stone_mass(group.upper, meaning, common_rock);
  const bool too_heavy = mean > believable_ratio * heaviest;
  const bool too_light = group.lower && group.lower->si() > 0 &&
                         believable_ratio * mean < stone_mass(*group.lower, meaning, common_rock);
  if (!too_heavy && !too_light) return std::nullopt;
  return fmt::format(
      "The stones of {} weigh {} on average, which does not fit their sizes: check "
      "the units and the count.",
      name, mass_in_both_systems(mean));
}

}  // namespace

Expected<MeasuredGradation> gradation_from_weighed(const std::vector<WeighedGroup>& groups,
                                                   SizeMeaning size_meaning) {
  std::vector<SizeRange> ranges;
  ranges.reserve(groups.size());
  for (const auto& group : groups) ranges.push_back({group.lower, group.upper});
  auto order = order_of_ranges(std::move(ranges), "group");
  if (!order) return order.problems();
  if (auto problems = problems_of_masses(groups); !problems.empty()) return problems;

  std::vector<SampleRange> sample;
  Mass total;
  Mass heaviest_mean;
  int counted = 0;
  std::vector<std::string> cautions;
  for (const auto i : *order) {
    const auto& group = groups[i];
    const auto name = fmt::format("group {}", i + 1);
    const double stones = group.mass.si() > 0 ? stones_in(group, size_meaning) : 0;
    const Mass mean = stones > 0 ? group.mass / stones : Mass{};
    sample.push_back(
        {{group.lower, group.upper}, {stones, mean.kilograms(), scatter_in(group)}, name});
    total = total + group.mass;
    heaviest_mean = std::max(heaviest_mean, mean);
    counted += group.stones;
    if (stones > 0 && group.stones == 0) {
      cautions.push_back(fmt::format(
          "The stones of {} were not counted; for the confidence, their number was estimated at "
          "{:.0f} from their mass.",
          name, stones));
    }
    if (auto doubt = doubt_about_mean(group, size_meaning, name)) cautions.push_back(*doubt);
  }
  auto measured = curve_of_ranges(sample, {size_meaning, PercentOf::mass}, "group", 0);
  if (!measured) return measured.problems();
  measured->stones = counted;
  measured->method = "weighed sample";
  measured->cautions.insert(measured->cautions.end(), cautions.begin(), cautions.end());

  Steps& steps = measured->steps;
  steps.given("n", "stones counted in the groups", measure(static_cast<double>(counted)));
  steps.computed("ΣM", "mass of the sample", "Σ M", measure(total));
  const auto& points = measured->curve.points();
  const std::size_t first = points.size() - sample.size();
  for (std::size_t k = 0; k < sample.size(); ++k) {
    const auto& group = groups[(*order)[k]];
    steps.computed(
        fmt::format("F{}", k + 1),
        fmt::format("percent smaller than {} by mass; {} in {}", size_in_both_systems(group.upper),
                    mass_in_both_systems(group.mass), sample[k].name),
        "100·Σ M up to here / Σ M", measure(points[first + k].percent_smaller),
        weighed_sample_source().sentence());
  }
  steps.computed("ne", "equally informative stones, m the mean stone mass of each group",
                 "(Σ M)² / Σ M·m", measure(measured->effective_stones), "Kish 1965 (from memory)");
  say_percentiles(*measured);
  if (const double share = heaviest_mean / total; share > 0.05) {
    measured->cautions.push_back(fmt::format(
        "A stone of the heaviest group is {:.0f} % of the sample; above about 5 % a single stone "
        "moves the curve.",
        100 * share));
  }
  return measured;
}

}  // namespace proofstone
