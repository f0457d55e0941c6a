// How long the chance of instability of a bank zone takes: ten million samples, shared by two
// threads of this shell, and the closed and iterated answers beside it.
#include <benchmark/benchmark.h>

#include <nlohmann/json.hpp>
#include <thread>

#include "engine/method/registry.h"
#include "engine/reliability/design_point.h"
#include "engine/reliability/first_order.h"
#include "engine/reliability/sampling.h"
#include "engine/reliability/size_limit_state.h"

namespace proofstone {
namespace {

constexpr std::uint64_t samples = 10'000'000;
constexpr int replicates = Sampler::usual_replicates;

/// The outside of a bend with velocity, depth, specific gravity and size uncertain.
SizeLimitState bank() {
  const nlohmann::json inputs = {{"attack", "outside-of-bend"}, {"average_velocity", "7.1 ft/s"},
                                 {"bend_radius", "620 ft"},     {"top_width", "200 ft"},
                                 {"local_depth", "12 ft"},      {"bank_angle", "1V:2H"},
                                 {"safety_factor", 1}};
  auto required =
      find_method("usace-bank-and-bed")
          ->vary(inputs, {"average_velocity", "local_depth", "specific_gravity"}, "d30");
  const double variation[] = {0.10, 0.05, 0.02};
  std::vector<Distribution> spreads;
  for (std::size_t i = 0; i < 3; ++i) {
    const double mean = *(*required)->inputs()[i].value_si;
    spreads.push_back(*Distribution::lognormal(mean, variation[i] * mean));
  }
  SizeLimitState::Surroundings around;
  around.available_si = Length::feet(0.73).meters();
  around.available = *Distribution::lognormal(around.available_si, 0.08 * around.available_si);
  return {std::move(*required), spreads, around};
}

void ten_million_samples_of_a_bank(benchmark::State& state) {
  const auto limit = bank();
  const auto space = ScoreSpace::of(limit, {});
  const Sampler sampler(*space);
  const auto threads = static_cast<int>(state.range(0));
  for (auto _ : state) {
    std::vector<SampleTally> tallies(replicates);
    std::vector<std::thread> workers;
    for (int worker = 0; worker < threads; ++worker) {
      workers.emplace_back([&, worker] {
        for (int r = worker; r < replicates; r += threads) {
          tallies[static_cast<std::size_t>(r)] = sampler.run({r, 0, samples / replicates});
        }
      });
    }
    for (auto& worker : workers) worker.join();
    const auto chance = combined_chance(tallies);
    state.counters["probability"] = chance.probability;
    state.counters["standard_error"] = chance.standard_error;
  }
}
BENCHMARK(ten_million_samples_of_a_bank)
    ->Arg(1)
    ->Arg(2)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime()
    ->MeasureProcessCPUTime();

void first_order_of_a_bank(benchmark::State& state) {
  const auto limit = bank();
  for (auto _ : state) benchmark::DoNotOptimize(first_order(limit));
}
BENCHMARK(first_order_of_a_bank)->Unit(benchmark::kMicrosecond);

void design_point_of_a_bank(benchmark::State& state) {
  const auto limit = bank();
  for (auto _ : state) benchmark::DoNotOptimize(find_design_point(limit));
}
BENCHMARK(design_point_of_a_bank)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace proofstone
