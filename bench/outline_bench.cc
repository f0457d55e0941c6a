// From a photograph of 12 megapixels to the outlines of its stones: the target is 3 s on two cores.
#include <benchmark/benchmark.h>

#include <fstream>
#include <sstream>

#include "engine/vision/outline_photo.h"
#include "engine/vision/stone_regions.h"
#include "photography/outline_weights.h"
#include "photography/photograph_file.h"

namespace proofstone {
namespace {

const OutlineNetwork& network() {
  static const auto read = OutlineNetwork::read(embedded_outline_weights());
  return *read;
}

const PhotoPixels& picture() {
  static const PhotoPixels pixels = [] {
    std::ifstream file(PROOFSTONE_SOURCE_FOLDER "/photography/pictures/rendered.jpg",
                       std::ios::binary);
    std::ostringstream bytes;
    bytes << file.rdbuf();
    return read_photograph(bytes.str(), "rendered.jpg")->pixels;
  }();
  return pixels;
}

void outline_12_megapixels(benchmark::State& state) {
  const auto photo = resized(picture(), 4000, 3000);
  for (auto _ : state) benchmark::DoNotOptimize(outline_photo(photo, network(), ""));
}
BENCHMARK(outline_12_megapixels)->Unit(benchmark::kMillisecond);

void network_alone(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(network().raw_maps(picture()));
}
BENCHMARK(network_alone)->Unit(benchmark::kMillisecond);

void stones_out_of_maps(benchmark::State& state) {
  const auto maps = network().maps(picture());
  for (auto _ : state) benchmark::DoNotOptimize(outlines_of(stone_regions(maps)));
}
BENCHMARK(stones_out_of_maps)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace proofstone
