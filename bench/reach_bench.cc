// Water profiles of a long surveyed reach.
#include <benchmark/benchmark.h>

#include <cmath>

#include "engine/hydraulics/profile.h"

namespace proofstone {
namespace {

/// 200 sections of 20 points with flood plains, 50 m apart on a slope of 0.004.
std::vector<ReachSection> long_reach() {
  std::vector<ReachSection> sections;
  for (int i = 0; i < 200; ++i) {
    std::vector<SectionPoint> points;
    const double bed = 0.2 * (200 - i);
    for (int j = 0; j < 20; ++j) {
      const double across = (j - 9.5) / 9.5;
      const double valley = 5 * across * across + (std::abs(across) > 0.4 ? 2.5 : 0.0);
      const double roughness = std::abs(across) > 0.4 ? 0.07 : 0.035;
      points.push_back({Length::meters(60 + 60 * across),
                        Length::meters(bed + valley + 0.2 * std::sin(7 * i + 3 * j)),
                        Dimensionless::number(roughness)});
    }
    ReachSection one{"", *Section::make(points)};
    one.left_bank = Length::meters(36);
    one.right_bank = Length::meters(84);
    one.to_next = ReachLengths::all(Length::meters(50));
    sections.push_back(std::move(one));
  }
  return sections;
}

void profiles_of_two_hundred_sections(benchmark::State& state) {
  const auto reach = Reach::make(long_reach());
  if (!reach) return state.SkipWithError("the reach is not sound");
  for (auto _ : state) {
    const ProfileSolver solver(*reach);
    for (const double discharge : {20.0, 60.0, 150.0, 300.0, 600.0}) {
      ProfileCase flow_case;
      flow_case.discharge = Discharge::cubic_meters_per_second(discharge);
      flow_case.downstream = Boundary::normal(Slope::ratio(0.004));
      benchmark::DoNotOptimize(solver.solve(flow_case));
    }
  }
}
BENCHMARK(profiles_of_two_hundred_sections)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace proofstone
