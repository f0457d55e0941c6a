// How long the engine takes for what a screen asks of it.
// Ratios inside one run are what to compare; single times depend on the machine.
#include <benchmark/benchmark.h>

#include <nlohmann/json.hpp>

#include "bench/example_site.h"
#include "engine/site/assess.h"
#include "engine/site/reach_water.h"
#include "engine/site/zone_sizing.h"
#include "report/request.h"

namespace proofstone {
namespace {

/// A document of at least `bytes`: the example with the count made longer.
std::string long_document(std::size_t bytes) {
  auto document = example_document();
  auto& changes = document["revisions"][1]["changes"];
  for (auto& change : changes) {
    if (change["set"] != "/looks/pile-count") continue;
    auto& axes = change["to"]["stones"]["axes"];
    const auto once = axes;
    for (std::size_t size = document.dump().size(); size < bytes; size += once.dump().size()) {
      axes.insert(axes.end(), once.begin(), once.end());
    }
  }
  return document.dump();
}

void assess_example(benchmark::State& state) {
  const auto site = site_from(example_document());
  if (!site) return state.SkipWithError("the example could not be read");
  for (auto _ : state) benchmark::DoNotOptimize(assess(*site, UnitSystem::us_customary));
}
BENCHMARK(assess_example)->Unit(benchmark::kMillisecond);

/// The first zone of the example in all its flow cases, by every sizing method.
void one_zone_by_all_methods(benchmark::State& state) {
  const auto site = site_from(example_document());
  if (!site) return state.SkipWithError("the example could not be read");
  const Wording wording(UnitSystem::us_customary);
  const auto& zone = site->zones.begin()->second;
  const auto water = water_at_zone(*site, zone, water_in_reaches(*site, wording), wording);
  for (auto _ : state) benchmark::DoNotOptimize(size_zone(*site, zone, water, wording));
}
BENCHMARK(one_zone_by_all_methods)->Unit(benchmark::kMicrosecond);

void answer_with_pictures(benchmark::State& state) {
  const auto request = nlohmann::json{
      {"ask", "assess"},
      {"document", example_document()},
      {"pictures",
       {{"width", 720}}}}.dump();
  for (auto _ : state) benchmark::DoNotOptimize(answer_request(request));
}
BENCHMARK(answer_with_pictures)->Unit(benchmark::kMillisecond);

void read_document_of_one_megabyte(benchmark::State& state) {
  const auto text = long_document(std::size_t{1} << 20);
  if (!read_site(text)) return state.SkipWithError("the example could not be read");
  for (auto _ : state) benchmark::DoNotOptimize(read_site(text));
  state.SetBytesProcessed(static_cast<std::int64_t>(state.iterations() * text.size()));
}
BENCHMARK(read_document_of_one_megabyte)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace proofstone
