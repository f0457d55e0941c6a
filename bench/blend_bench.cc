// How long a blend of eight materials takes: free shares, a recipe of buckets, and whole truckloads
// to the proven cheapest.
#include <benchmark/benchmark.h>

#include "engine/blend/blend_shares.h"
#include "engine/blend/load_plan.h"

namespace proofstone {
namespace {

constexpr double sieves[] = {25, 50, 100, 150, 225, 300, 450, 600};
/// Percents smaller of eight invented rocks; their price for a tonne; their truckload in tonnes.
constexpr double rocks[][8] = {
    {30, 62, 88, 97, 100, 100, 100, 100}, {8, 21, 55, 80, 96, 100, 100, 100},
    {2, 9, 30, 58, 84, 97, 100, 100},     {0, 3, 12, 34, 66, 90, 100, 100},
    {0, 1, 5, 14, 40, 70, 96, 100},       {0, 0, 2, 6, 18, 44, 85, 100},
    {0, 0, 0, 1, 7, 22, 66, 100},         {12, 15, 22, 30, 48, 66, 90, 100}};
constexpr double prices[] = {9.4, 12.15, 14.8, 17.35, 19.9, 22.6, 26.05, 13.7};
constexpr double loads[] = {18.2, 18.0, 17.6, 17.1, 16.8, 16.5, 15.9, 17.4};

std::vector<OfferedMaterial> eight_materials() {
  std::vector<OfferedMaterial> materials;
  for (std::size_t i = 0; i < std::size(rocks); ++i) {
    std::vector<GradationPoint> points;
    for (std::size_t k = 0; k < std::size(sieves); ++k) {
      points.push_back({Length::millimeters(sieves[k]), rocks[i][k]});
    }
    const auto name = "rock " + std::to_string(i + 1);
    materials.push_back({name,
                         name,
                         *Gradation::make(points, GradationBasis{}),
                         prices[i],
                         Mass::tonnes(4000),
                         Mass::tonnes(loads[i]),
                         {}});
  }
  return materials;
}

BlendTarget band() {
  const double low[] = {2, 6, 14, 26, 45, 66, 90, 100};
  const double high[] = {8, 14, 26, 42, 62, 82, 98, 100};
  std::vector<PercentWindow> windows;
  for (std::size_t k = 0; k < std::size(sieves); ++k) {
    windows.push_back({Length::millimeters(sieves[k]), low[k], high[k]});
  }
  return *blend_target(eight_materials(),
                       *GradationBand::from_percent_windows(windows, GradationBasis{}));
}

void widest_margin_of_eight(benchmark::State& state) {
  const auto target = band();
  for (auto _ : state) benchmark::DoNotOptimize(widest_margin(target));
}
BENCHMARK(widest_margin_of_eight)->Unit(benchmark::kMicrosecond);

/// Whole truckloads of eight materials; the argument is the mass to bring in tonnes.
void cheapest_truckloads_of_eight(benchmark::State& state) {
  const auto target = band();
  const auto materials = eight_materials();
  for (auto _ : state) {
    const auto plan =
        cheapest_loads(target, materials, {Mass::tonnes(static_cast<double>(state.range(0)))});
    state.counters["proven"] = plan && plan->proven ? 1 : 0;
    state.counters["programs"] = plan ? static_cast<double>(plan->programs) : 0;
    state.counters["cost"] = plan ? plan->cost : 0;
  }
}
BENCHMARK(cheapest_truckloads_of_eight)
    ->Arg(100)
    ->Arg(300)
    ->Arg(1000)
    ->Arg(3000)
    ->Unit(benchmark::kMillisecond);

void recipe_of_eight(benchmark::State& state) {
  const auto target = band();
  for (auto _ : state) {
    const auto recipe = best_recipe(target, static_cast<int>(state.range(0)));
    state.counters["proven"] = recipe && recipe->proven ? 1 : 0;
    state.counters["programs"] = recipe ? static_cast<double>(recipe->programs) : 0;
  }
}
BENCHMARK(recipe_of_eight)->Arg(10)->Arg(20)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace proofstone
