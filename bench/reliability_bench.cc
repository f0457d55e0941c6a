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

/// A method with what is uncertain of it; every quantity is lognormal with a tenth of its mean.
struct Limit {
  const char* method;
  nlohmann::json inputs;
  std::vector<std::string> varied;
  const char* output;
};

SizeLimitState limit_state(const Limit& of) {
  auto required = find_method(of.method)->vary(of.inputs, of.varied, of.output);
  std::vector<Distribution> spreads;
  for (const auto& input : (*required)->inputs()) {
    spreads.push_back(*Distribution::lognormal(*input.value_si, 0.1 * *input.value_si));
  }
  SizeLimitState::Surroundings around;
  around.available_si = Length::feet(0.73).meters();
  around.available = *Distribution::lognormal(around.available_si, 0.08 * around.available_si);
  return {std::move(*required), spreads, around};
}

/// The outside of a bend with velocity, depth, specific gravity and size uncertain.
SizeLimitState bank() {
  return limit_state({"usace-bank-and-bed",
                      {{"attack", "outside-of-bend"},
                       {"average_velocity", "7.1 ft/s"},
                       {"bend_radius", "620 ft"},
                       {"top_width", "200 ft"},
                       {"local_depth", "12 ft"},
                       {"bank_angle", "1V:2H"},
                       {"safety_factor", 1}},
                      {"average_velocity", "local_depth", "specific_gravity"},
                      "d30"});
}

/// Ten million samples on so many threads.
void ten_million_samples(benchmark::State& state, const SizeLimitState& limit, int threads) {
  const auto space = ScoreSpace::of(limit, {});
  const Sampler sampler(*space);
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

void ten_million_samples_of_a_bank(benchmark::State& state) {
  ten_million_samples(state, bank(), static_cast<int>(state.range(0)));
}
BENCHMARK(ten_million_samples_of_a_bank)
    ->Arg(1)
    ->Arg(2)
    ->Unit(benchmark::kMillisecond)
    ->UseRealTime()
    ->MeasureProcessCPUTime();

/// The methods used most, two threads each.
const std::vector<Limit>& limits() {
  static const std::vector<Limit> all{
      {"isbash", {{"velocity", "10 ft/s"}}, {"velocity", "specific_gravity"}, "d50"},
      {"fhwa-revetment",
       {{"average_velocity", "7.1 ft/s"},
        {"top_width", "200 ft"},
        {"local_depth", "12 ft"},
        {"bank_angle", "1V:2H"}},
       {"average_velocity", "local_depth", "specific_gravity"},
       "d50"},
      {"fhwa-shear-lining",
       {{"depth", "3 ft"}, {"slope", "0.02"}, {"bank_angle", "1V:2H"}},
       {"depth", "slope", "specific_gravity"},
       "d50"},
      {"pilarczyk",
       {{"velocity", "3 m/s"}, {"depth", "4 m"}},
       {"velocity", "depth", "specific_gravity"},
       "d50"},
      {"escarameia-may",
       {{"average_velocity", "3 m/s"}},
       {"average_velocity", "specific_gravity"},
       "d50"},
      {"rock-chute", {{"unit_discharge", "5 ft²/s"}, {"slope", "0.1"}}, {"unit_discharge"}, "d50"},
      {"hudson",
       {{"wave_height", "3 ft"}, {"slope", "1V:2H"}},
       {"wave_height", "specific_gravity"},
       "d50"},
      {"van-der-meer",
       {{"wave_height", "1 m"}, {"mean_period", "4 s"}, {"slope", "1V:3H"}},
       {"wave_height", "mean_period", "rock"},
       "d50"},
  };
  return all;
}

void ten_million_samples_by(benchmark::State& state) {
  const auto& of = limits()[static_cast<std::size_t>(state.range(0))];
  state.SetLabel(of.method);
  ten_million_samples(state, limit_state(of), 2);
}
BENCHMARK(ten_million_samples_by)
    ->DenseRange(0, 7)
    ->Iterations(1)
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
