// How long simulated inspections take, and a season's record of a lot.
#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <nlohmann/json.hpp>

#include "bench/example_site.h"
#include "engine/evidence/band_comparison.h"
#include "engine/rock/rock_class.h"
#include "engine/site/assess.h"
#include "report/request.h"
#include "simulation/known_pile.h"

namespace proofstone {
namespace {

/// A count of 100 stones on a grid, its curve and the verdict on it.
void inspection(benchmark::State& state) {
  const auto* rock_class = find_rock_class("fhwa-3");
  Draws draws(1);
  const KnownPile pile;
  for (auto _ : state) {
    const auto look = look_at(pile, {}, draws);
    benchmark::DoNotOptimize(compare_with_band(look, rock_class->band, 0.95));
  }
}
BENCHMARK(inspection)->Unit(benchmark::kMicrosecond);

/// The example site with `loads` loads and a count of `stones` stones.
std::string record(int loads, int stones) {
  auto document = example_document();
  auto& changes = document["revisions"].back()["changes"];
  const auto set = [&](const std::string& item, nlohmann::json value) {
    changes.push_back({{"set", item}, {"to", std::move(value)}});
  };
  Draws draws(2);
  KnownPile pile;
  pile.median = Length::inches(12);
  Observer observer;
  observer.stones = stones;
  auto axes = nlohmann::json::array();
  for (const Length size : read_stones(pile, observer, draws)) {
    axes.push_back(fmt::format("{:.2f} in", size.inches()));
  }
  set("/lots/first-deliveries/supply", {{"planned_mass", "9000 ton"},
                                        {"target_size", "12 in"},
                                        {"load_spread", "0.5 in"},
                                        {"run_length", "200"}});
  set("/looks/pile-count/stones", {{"axes", axes}});
  for (int load = 0; load < loads; ++load) {
    const double size = 12 + 0.5 * draws.normal();
    set(fmt::format("/loads/load-{:03d}", load),
        {{"lot", "first-deliveries"},
         {"when", fmt::format("2026-06-{:02d}T{:02d}:00:00Z", 1 + load / 20, load % 20)},
         {"ticket", fmt::format("{}", 4700 + load)},
         {"mass", "20 ton"},
         {"median_size", fmt::format("{:.2f} in", size)}});
  }
  return document.dump();
}

/// The whole document read and assessed.
void assess_record(benchmark::State& state, int loads, int stones) {
  const auto text = record(loads, stones);
  const auto first = read_site(text);
  if (!first) return state.SkipWithError(first.problems().front().sentence().c_str());
  for (auto _ : state) {
    const auto site = read_site(text);
    benchmark::DoNotOptimize(assess(*site, UnitSystem::us_customary));
  }
}
BENCHMARK_CAPTURE(assess_record, count_of_500_stones, 0, 500)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(assess_record, season_of_300_loads, 300, 5000)->Unit(benchmark::kMillisecond);

/// What a page asks for after a tapped stone: the looks at the lot, with their pictures.
void answer_tap(benchmark::State& state) {
  const auto request = nlohmann::json{
      {"ask", "lot"},
      {"lot", "first-deliveries"},
      {"document", nlohmann::json::parse(record(0, 500))},
      {"pictures",
       {{"width", 720}}}}.dump();
  for (auto _ : state) benchmark::DoNotOptimize(answer_request(request));
}
BENCHMARK(answer_tap)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace proofstone
