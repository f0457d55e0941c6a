#include "engine/rock/gradation_band.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "engine/quantity/measure.h"
#include "engine/rock/limit_curve.h"
#include "engine/rock/size_and_mass.h"

namespace proofstone {
namespace {

/// A window beside its place in the specification, which problems name.
template <class Window>
struct Placed {
  Window window;
  std::size_t place = 0;

  Problem problem(const std::string& code, const std::string& what,
                  const std::string& allowed) const {
    return {code, what, {}, fmt::format("window {}", place + 1), allowed};
  }
};

Problem no_windows() {
  return {"empty-band", "The gradation band has no windows.", {}, {}, "at least one window"};
}

bool is_size(Length size) { return size.si() > 0 && std::isfinite(size.si()); }

/// "11.5 in (292 mm)"
std::string size_words(Length size) {
  return display(measure(size), UnitSystem::us_customary, LengthUse::rock).text + " (" +
         display(measure(size), UnitSystem::si, LengthUse::rock).text + ")";
}

std::string mass_words(Mass mass) {
  return display(measure(mass), UnitSystem::us_customary).text + " (" +
         display(measure(mass), UnitSystem::si).text + ")";
}

BandCondition at_most(Length size, double percent, std::string wording) {
  return {size, BandCondition::Sense::at_most, percent, std::move(wording), std::nullopt};
}

BandCondition at_least(Length size, double percent, std::string wording) {
  return {size, BandCondition::Sense::at_least, percent, std::move(wording), std::nullopt};
}

/// One end of a percent window as its specification words it: at most 5 % smaller is at least 95 %
/// larger.
BandCondition percent_condition(const PercentWindow& window, BandCondition::Sense sense,
                                double percent) {
  const bool upper = (sense == BandCondition::Sense::at_most) != window.worded_as_larger;
  const double printed = window.worded_as_larger ? 100 - percent : percent;
  auto wording =
      fmt::format("{} {} % {} than {}", upper ? "at most" : "at least", significant(printed, 4),
                  window.worded_as_larger ? "larger" : "smaller",
                  window.size_words.empty() ? size_words(window.size) : window.size_words);
  if (window.percent_of) {
    wording += fmt::format(" by {}", percent_of_name(*window.percent_of));
  }
  return {window.size, sense, percent, std::move(wording), window.percent_of};
}

Problem no_density() {
  return {"density-not-positive",
          "The rock density is not above zero.",
          {},
          {},
          "a density above zero"};
}

bool is_density(Density density) { return density.si() > 0 && std::isfinite(density.si()); }

// A size window "Dp in [A, B]" is F(A) ≤ p and F(B) ≥ p.
constexpr const char* contradiction =
    "This window contradicts a window before it: no rock can keep both.";

Problems unusable_window(const Placed<PercentWindow>& placed) {
  const auto& window = placed.window;
  Problems problems;
  if (!is_size(window.size)) {
    problems.push_back(placed.problem("size-not-positive", "The window's size is not above zero.",
                                      "a size above zero"));
  }
  if (!(window.min_percent >= 0 && window.min_percent <= window.max_percent &&
        window.max_percent <= 100)) {
    problems.push_back(placed.problem("percent-outside",
                                      "The window's percents are not a range within 0 to 100.",
                                      "0 to 100, the smaller one first"));
  }
  return problems;
}

Problems unusable_window(const Placed<SizeWindow>& placed) {
  const auto& window = placed.window;
  Problems problems;
  if (!(window.percent > 0 && window.percent <= 100)) {
    problems.push_back(placed.problem("percent-outside", "The window's percent is not usable.",
                                      "more than 0, at most 100"));
  }
  if (!window.min_size && !window.max_size) {
    problems.push_back(placed.problem("empty-window",
                                      "The window has neither a smallest nor a largest size.",
                                      "at least one of the two"));
  }
  for (const auto& size : {window.min_size, window.max_size}) {
    if (size && !is_size(*size)) {
      problems.push_back(placed.problem(
          "size-not-positive", "A size of the window is not above zero.", "sizes above zero"));
    }
  }
  if (window.min_size && window.max_size && *window.min_size > *window.max_size) {
    problems.push_back(placed.problem("window-reversed",
                                      "The smallest size of the window is larger than the largest.",
                                      "the smaller size first"));
  }
  return problems;
}

/// The windows in the order of `key`, or what is wrong with each of them by itself.
template <class Window, class Key>
Expected<std::vector<Placed<Window>>> usable_in_order(std::vector<Window> windows, Key key) {
  if (windows.empty()) return no_windows();
  std::vector<Placed<Window>> placed;
  placed.reserve(windows.size());
  Problems problems;
  for (std::size_t i = 0; i < windows.size(); ++i) {
    placed.push_back({std::move(windows[i]), i});
    for (auto& problem : unusable_window(placed.back())) problems.push_back(std::move(problem));
  }
  if (!problems.empty()) return problems;
  std::sort(placed.begin(), placed.end(), [&](const auto& a, const auto& b) {
    return std::pair(key(a.window), a.place) < std::pair(key(b.window), b.place);
  });
  return placed;
}

/// How a wording calls the p-percent value: "D50" of a size, "W50" of a mass; 100 is the largest.
std::string value_name(const char* letter, double percent) {
  if (percent >= 100) return "largest stone";
  return letter + significant(percent, 4);
}

}  // namespace

PercentOf percent_of(const BandCondition& condition, const GradationBasis& basis) {
  return condition.percent_of.value_or(basis.percent);
}

Expected<GradationBand> GradationBand::from_percent_windows(std::vector<PercentWindow> windows,
                                                            GradationBasis basis) {
  const auto usable =
      usable_in_order(std::move(windows), [](const PercentWindow& w) { return w.size.si(); });
  if (!usable) return usable.problems();
  const auto& placed = *usable;

  Problems problems;
  GradationBand band;
  band.basis_ = basis;
  double most_so_far = 0;
  for (std::size_t i = 0; i < placed.size(); ++i) {
    const auto& window = placed[i].window;
    const Length size = window.size;
    const double min_percent = window.min_percent;
    const double max_percent = window.max_percent;
    if (i > 0 && placed[i - 1].window.size == size) {
      problems.push_back(
          placed[i].problem("size-twice", "This size has two windows.", "one window a size"));
    }
    most_so_far = std::max(most_so_far, min_percent);
    if (max_percent < most_so_far) {
      problems.push_back(placed[i].problem(
          "windows-contradict", contradiction,
          fmt::format("a largest percent of at least {}", significant(most_so_far, 4))));
    }
    if (max_percent < 100) {
      band.conditions_.push_back(
          percent_condition(window, BandCondition::Sense::at_most, max_percent));
    }
    if (min_percent > 0) {
      band.conditions_.push_back(
          percent_condition(window, BandCondition::Sense::at_least, min_percent));
    }
    // What a smaller size demands holds for a larger one too.
    band.coarse_limit_.push_back({size, most_so_far});
    band.fine_limit_.push_back({size, max_percent});
  }
  if (!problems.empty()) return problems;
  // What a larger size allows at most, a smaller one may not pass either.
  for (std::size_t i = band.fine_limit_.size(); i-- > 1;) {
    double& percent = band.fine_limit_[i - 1].percent_smaller;
    percent = std::min(percent, band.fine_limit_[i].percent_smaller);
  }
  return band;
}

Expected<GradationBand> GradationBand::from_size_windows(std::vector<SizeWindow> windows,
                                                         GradationBasis basis) {
  const auto usable =
      usable_in_order(std::move(windows), [](const SizeWindow& w) { return w.percent; });
  if (!usable) return usable.problems();
  const auto& placed = *usable;

  Problems problems;
  GradationBand band;
  band.basis_ = basis;
  std::optional<Length> largest_min;
  for (std::size_t i = 0; i < placed.size(); ++i) {
    const auto& [percent, min_size, max_size] = placed[i].window;
    if (i > 0 && !(placed[i - 1].window.percent < percent)) {
      problems.push_back(placed[i].problem("percent-twice", "This percent has two windows.",
                                           "one window a percent"));
    }
    const auto name = value_name("D", percent);
    if (min_size) {
      if (!largest_min || *min_size > *largest_min) largest_min = min_size;
      band.conditions_.push_back(
          at_most(*min_size, percent, name + " at least " + size_words(*min_size)));
      band.fine_limit_.push_back({*largest_min, percent});
    }
    if (max_size) {
      if (largest_min && *max_size < *largest_min) {
        problems.push_back(
            placed[i].problem("windows-contradict", contradiction,
                              "a largest size of at least " + size_words(*largest_min)));
      }
      band.conditions_.push_back(
          at_least(*max_size, percent, name + " at most " + size_words(*max_size)));
      band.coarse_limit_.push_back({*max_size, percent});
    }
  }
  if (!problems.empty()) return problems;
  // What a larger percent allows at most, a smaller one may not pass either.
  for (std::size_t i = band.coarse_limit_.size(); i-- > 1;) {
    auto& smaller = band.coarse_limit_[i - 1].size;
    smaller = std::min(smaller, band.coarse_limit_[i].size);
  }
  return band;
}

Expected<GradationBand> GradationBand::from_mass_windows(const std::vector<MassWindow>& windows,
                                                         Density rock_density, PercentOf percent) {
  if (!is_density(rock_density)) return no_density();
  std::vector<SizeWindow> sizes;
  sizes.reserve(windows.size());
  const auto sphere = [&](const std::optional<Mass>& mass) -> std::optional<Length> {
    if (!mass) return std::nullopt;
    return stone_size(*mass, SizeMeaning::sphere, rock_density);
  };
  for (const auto& window : windows) {
    sizes.push_back({window.percent, sphere(window.min_mass), sphere(window.max_mass)});
  }
  auto band = from_size_windows(std::move(sizes), {SizeMeaning::sphere, percent});
  if (!band) return band;
  // The specification speaks of masses, so the wording does too.
  for (auto& condition : band->conditions_) {
    const bool is_min = condition.sense == BandCondition::Sense::at_most;
    condition.wording = value_name("W", condition.percent) + (is_min ? " at least " : " at most ") +
                        mass_words(stone_mass(condition.size, SizeMeaning::sphere, rock_density));
  }
  return band;
}

Expected<GradationBand> GradationBand::from_mass_percent_windows(
    const std::vector<MassPercentWindow>& windows, Density rock_density, PercentOf percent) {
  if (!is_density(rock_density)) return no_density();
  std::vector<PercentWindow> sizes;
  sizes.reserve(windows.size());
  for (const auto& window : windows) {
    sizes.push_back({stone_size(window.mass, SizeMeaning::sphere, rock_density), window.min_percent,
                     window.max_percent, window.percent_of, window.worded_as_larger,
                     mass_words(window.mass)});
  }
  return from_percent_windows(std::move(sizes), {SizeMeaning::sphere, percent});
}

Expected<Length> GradationBand::smallest_size_at(double percent) const {
  return size_on_limit(fine_limit_, percent);
}

Expected<Length> GradationBand::largest_size_at(double percent) const {
  return size_on_limit(coarse_limit_, percent);
}

Expected<Length> GradationBand::size_on_limit(const std::vector<GradationPoint>& limit,
                                              double percent) {
  if (!limit.empty()) {
    if (const auto size = size_on_curve(limit, percent)) return *size;
  }
  return Problem{"beyond-band",
                 fmt::format("The band sets no limit at {} % smaller.", significant(percent, 4)),
                 {},
                 {},
                 limit.empty()
                     ? std::string("a band with this limit")
                     : fmt::format("{} to {} %", significant(limit.front().percent_smaller, 4),
                                   significant(limit.back().percent_smaller, 4))};
}

}  // namespace proofstone
