#pragma once

#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <vector>

#include "engine/hydraulics/profile.h"

namespace proofstone::reach_example {

/// A trapezoid in metres, deep enough for its water, with its bed at `bed`.
inline ReachSection trapezoid(double bottom, double side, double bed, double n, double length) {
  constexpr double height = 20;
  std::vector<SectionPoint> points;
  const auto add = [&](double x, double z) {
    points.push_back({Length::meters(x), Length::meters(z), Dimensionless::number(n)});
  };
  add(-bottom / 2 - side * height, bed + height);
  add(-bottom / 2, bed);
  add(bottom / 2, bed);
  add(bottom / 2 + side * height, bed + height);
  auto section = Section::make(std::move(points));
  EXPECT_TRUE(section);
  ReachSection one{"", std::move(*section)};
  one.to_next = ReachLengths::all(Length::meters(length));
  one.losses = {Dimensionless::number(0), Dimensionless::number(0)};
  return one;
}

/// One part of a channel of constant slope, cut into equal steps; its last section is left out.
struct Run {
  double slope = 0;
  double length = 0;
  int steps = 1;
};

/// The computed profiles were worked out with g = 9.81 m/s². Q²/g and Q·n decide the depths, so a
/// discharge multiplied by this and a roughness divided by it give the same profile under standard
/// gravity.
inline const double to_standard_gravity =
    std::sqrt(standard_gravity.meters_per_second_squared() / 9.81);

/// The channel b 6 m, 2H:1V, n 0.025 that the computed profiles use, run after run, the last bed at
/// elevation 0.
inline std::vector<ReachSection> channel(const std::vector<Run>& runs) {
  double bed = 0;
  for (const Run& run : runs) bed += run.slope * run.length;
  std::vector<ReachSection> sections;
  for (const Run& run : runs) {
    const double step = run.length / run.steps;
    for (int i = 0; i < run.steps; ++i) {
      sections.push_back(trapezoid(6, 2, bed, 0.025 / to_standard_gravity, step));
      bed -= run.slope * step;
    }
  }
  sections.push_back(trapezoid(6, 2, bed, 0.025 / to_standard_gravity, 1));
  return sections;
}

inline WaterProfile solved(std::vector<ReachSection> sections, const ProfileCase& flow_case) {
  const auto reach = Reach::make(std::move(sections));
  EXPECT_TRUE(reach) << (reach ? "" : reach.problems().front().sentence());
  if (!reach) return {};
  auto profile = water_profile(*reach, flow_case);
  EXPECT_TRUE(profile) << (profile ? "" : profile.problems().front().sentence());
  return profile ? *profile : WaterProfile{};
}

/// Depth `upstream` metres above the end of a profile.
inline double depth_above_end(const WaterProfile& profile, double upstream) {
  const double end = profile.sections.back().distance.meters();
  for (const ProfileSection& section : profile.sections) {
    if (std::abs(end - section.distance.meters() - upstream) < 1e-6) {
      return section.flow.wet.deepest.meters();
    }
  }
  ADD_FAILURE() << "no section " << upstream << " m above the end";
  return 0;
}

/// The discharge of 50 m³/s for which the profiles in `channel` were worked out.
inline const double computed_discharge = 50 * to_standard_gravity;

inline ProfileCase flow(double discharge, Boundary downstream,
                        std::optional<Boundary> upstream = {}) {
  ProfileCase one;
  one.discharge = Discharge::cubic_meters_per_second(discharge);
  one.downstream = std::move(downstream);
  one.upstream = std::move(upstream);
  return one;
}

}  // namespace proofstone::reach_example
