#pragma once

#include <rapidcheck.h>

#include <vector>

#include "engine/hydraulics/section.h"

/// Random ground for property tests.
namespace proofstone {

inline double between(double low, double high) {
  constexpr int steps = 100'000;
  const int step = *rc::gen::inRange(0, steps + 1);
  return low + (high - low) * step / steps;
}

/// A valley between two ends 10 m high, with up to `most_inner` random points of ground below 6 m,
/// in SI.
inline std::vector<SectionPoint> any_valley(int most_inner) {
  const int inner = *rc::gen::inRange(1, most_inner + 1);
  std::vector<SectionPoint> points;
  const auto add = [&](double x, double z) {
    const double n = between(0.02, 0.1);
    points.push_back({Length::meters(x), Length::meters(z), Dimensionless::number(n)});
  };
  double x = 0;
  add(x, 10);
  for (int i = 0; i < inner; ++i) {
    x += between(0.5, 20);
    const double z = between(0, 6);
    add(x, z);
  }
  x += between(0.5, 20);
  add(x, 10);
  return points;
}

inline Section section_of(std::vector<SectionPoint> points) {
  auto section = Section::make(std::move(points));
  RC_ASSERT(static_cast<bool>(section));
  return *section;
}

}  // namespace proofstone
