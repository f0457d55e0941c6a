#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

#include "engine/rock/gradation_band.h"

namespace proofstone {
namespace {

constexpr GradationBasis by_mass{SizeMeaning::intermediate_axis, PercentOf::mass};
constexpr std::array<double, 4> percents{15, 50, 85, 100};

/// Sizes of a made-up rock at 15, 50, 85 and 100 %, in tenths of an inch, rising.
std::array<int, 4> any_rock() {
  std::array<int, 4> sizes{};
  int size = 10;
  for (int& entry : sizes) {
    size += *rc::gen::inRange(1, 80);
    entry = size;
  }
  return sizes;
}

/// Windows round that rock, which therefore do not contradict one another.
std::vector<SizeWindow> windows_round(const std::array<int, 4>& rock) {
  std::vector<SizeWindow> windows;
  for (std::size_t i = 0; i < percents.size(); ++i) {
    const int below = *rc::gen::inRange(0, 9);
    const int above = *rc::gen::inRange(0, 40);
    windows.push_back({percents[i], Length::inches((rock[i] - below) / 10.0),
                       Length::inches((rock[i] + above) / 10.0)});
  }
  return windows;
}

bool keeps(const Gradation& rock, const GradationBand& band) {
  return std::all_of(band.conditions().begin(), band.conditions().end(),
                     [&](const auto& condition) {
                       const double percent = rock.percent_smaller(condition.size);
                       return condition.sense == BandCondition::Sense::at_most
                                  ? percent <= condition.percent + 1e-9
                                  : percent >= condition.percent - 1e-9;
                     });
}

Gradation curve(const std::array<int, 4>& rock) {
  std::vector<GradationPoint> points{{Length::inches(0.5), 0}};
  for (std::size_t i = 0; i < percents.size(); ++i) {
    points.push_back({Length::inches(rock[i] / 10.0), percents[i]});
  }
  return *Gradation::make(points, by_mass);
}

RC_GTEST_PROP(GradationBand, is_kept_by_the_rock_it_was_drawn_round, ()) {
  const auto rock = any_rock();
  const auto band = GradationBand::from_size_windows(windows_round(rock), by_mass);
  RC_ASSERT(static_cast<bool>(band));
  RC_ASSERT(keeps(curve(rock), *band));
}

// "Dp in [A, B]" is "F(A) ≤ p and F(B) ≥ p": both wordings make the same band.
RC_GTEST_PROP(GradationBand, size_windows_are_percent_windows, ()) {
  const auto windows = windows_round(any_rock());
  const auto band = GradationBand::from_size_windows(windows, by_mass);
  RC_ASSERT(static_cast<bool>(band));
  const auto other = curve(any_rock());
  bool inside = true;
  for (const auto& window : windows) {
    const bool largest = window.percent >= 100;
    inside = inside &&
             (largest || *other.size_at(window.percent) >= *window.min_size * (1 - 1e-12)) &&
             *other.size_at(window.percent) <= *window.max_size * (1 + 1e-12);
  }
  RC_ASSERT(keeps(other, *band) == inside);
}

RC_GTEST_PROP(GradationBand, limits_hold_every_rock_that_keeps_it, ()) {
  const auto rock = any_rock();
  const auto band = *GradationBand::from_size_windows(windows_round(rock), by_mass);
  const auto inside = curve(rock);
  for (const double percent : percents) {
    RC_ASSERT(*band.smallest_size_at(percent) <= *inside.size_at(percent) * (1 + 1e-12));
    RC_ASSERT(*band.largest_size_at(percent) >= *inside.size_at(percent) * (1 - 1e-12));
  }
}

RC_GTEST_PROP(GradationBand, masses_and_sizes_make_the_same_band, ()) {
  const auto density = Density::kilograms_per_cubic_meter(2650);
  const auto sizes = windows_round(any_rock());
  const auto mass = [&](Length size) {
    const double d = size.meters();
    return Mass::kilograms(3.14159265358979323846 / 6 * 2650 * d * d * d);
  };
  std::vector<MassWindow> masses;
  for (const auto& window : sizes) {
    masses.push_back({window.percent, mass(*window.min_size), mass(*window.max_size)});
  }
  const auto by_size =
      GradationBand::from_size_windows(sizes, {SizeMeaning::sphere, PercentOf::mass});
  const auto by_weight = GradationBand::from_mass_windows(masses, density, PercentOf::mass);
  RC_ASSERT(by_size && by_weight);
  RC_ASSERT(by_size->conditions().size() == by_weight->conditions().size());
  for (std::size_t i = 0; i < by_size->conditions().size(); ++i) {
    RC_ASSERT(std::abs(by_size->conditions()[i].size / by_weight->conditions()[i].size - 1) <
              1e-12);
  }
}

}  // namespace
}  // namespace proofstone
