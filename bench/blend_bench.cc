// How long a blend of eight materials takes: free shares, a recipe of buckets, and whole truckloads
// to the proven cheapest.
#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>
#include <cmath>

#include "engine/blend/blend_shares.h"
#include "engine/blend/load_plan.h"
#include "engine/evidence/standard_normal.h"
#include "simulation/draws.h"

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

/// Eight log-normal rocks at random, and a band of 6 to 12 % either side of some blend of them.
struct RandomBlend {
  std::vector<OfferedMaterial> materials;
  std::vector<PercentWindow> windows;

  explicit RandomBlend(unsigned seed) {
    Draws draws(seed);
    std::vector<double> shares;
    double all = 0;
    for (std::size_t i = 0; i < std::size(rocks); ++i) {
      const double median = 40 * std::pow(12.0, draws.uniform());
      const double spread = 0.25 + 0.45 * draws.uniform();
      std::vector<GradationPoint> points;
      for (const double sieve : sieves) {
        const double percent = 100 * normal_cumulative(std::log(sieve / median) / spread);
        points.push_back({Length::millimeters(sieve), std::round(10 * percent) / 10});
      }
      points.back().percent_smaller = 100;
      const auto name = "rock " + std::to_string(i + 1);
      materials.push_back({name,
                           name,
                           *Gradation::make(points, GradationBasis{}),
                           8 + 20 * draws.uniform(),
                           Mass::tonnes(150 + 800 * draws.uniform()),
                           Mass::tonnes(14 + 8 * draws.uniform()),
                           {}});
      shares.push_back(-std::log(draws.uniform()));
      all += shares.back();
    }
    for (const double sieve : sieves) {
      double percent = 0;
      for (std::size_t i = 0; i < materials.size(); ++i) {
        percent +=
            shares[i] / all * materials[i].gradation.percent_smaller(Length::millimeters(sieve));
      }
      const double half = 6 + 6 * draws.uniform();
      windows.push_back({Length::millimeters(sieve), std::max(0.0, percent - half),
                         std::min(100.0, percent + half)});
    }
  }
};

/// The same of fifty problems at random: the slowest of them, and how many were not proven. Mass to
/// bring in tonnes.
void cheapest_truckloads_of_random_eights(benchmark::State& state) {
  const LoadOrder order{Mass::tonnes(static_cast<double>(state.range(0)))};
  double slowest = 0;
  int solved = 0;
  int not_proven = 0;
  for (auto _ : state) {
    solved = 0;
    not_proven = 0;
    for (unsigned seed = 1; seed <= 50; ++seed) {
      const RandomBlend blend(seed);
      const auto target = *blend_target(
          blend.materials, *GradationBand::from_percent_windows(blend.windows, GradationBasis{}));
      const auto start = std::chrono::steady_clock::now();
      const auto plan = cheapest_loads(target, blend.materials, order);
      const std::chrono::duration<double, std::milli> took =
          std::chrono::steady_clock::now() - start;
      slowest = std::max(slowest, took.count());
      if (plan) ++solved;
      if (plan && !plan->proven) ++not_proven;
    }
  }
  state.counters["slowest_ms"] = slowest;
  state.counters["solved"] = solved;
  state.counters["not_proven"] = not_proven;
}
BENCHMARK(cheapest_truckloads_of_random_eights)->Arg(200)->Arg(800)->Unit(benchmark::kMillisecond);

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
