#include "engine/reliability/sampling.h"

#include <algorithm>
#include <cmath>

#include "engine/evidence/confidence.h"
#include "engine/reliability/shifted_sobol.h"

namespace proofstone {
namespace {

/// Turns a point of the unit cube into values.
void values_at(const ScoreSpace& space, std::vector<double>& point, std::vector<double>& values) {
  if (!space.independent()) {
    for (double& coordinate : point) coordinate = normal_quantile(coordinate);
    space.values_at(point, values);
    return;
  }
  const auto& variables = space.limit().variables();
  for (std::size_t i = 0; i < point.size(); ++i) {
    values[i] = variables[i].distribution.at_probability(point[i]);
  }
}

}  // namespace

SampleTally& SampleTally::operator+=(const SampleTally& other) {
  samples += other.samples;
  failures += other.failures;
  unanswered += other.unanswered;
  return *this;
}

SampleTally Sampler::run(const SampleSlice& slice) const {
  ShiftedSobol points(space_->size(), slice.replicate, slice.first);
  std::vector<double> point(space_->size());
  std::vector<double> values(space_->size());
  SampleTally tally;
  tally.samples = slice.count;
  for (std::uint64_t i = 0; i < slice.count; ++i) {
    points.next(point);
    values_at(*space_, point, values);
    const auto margin = space_->limit().margin(values);
    if (!margin) ++tally.unanswered;
    if (!margin || !(*margin > 0)) ++tally.failures;
  }
  return tally;
}

SampledChance Sampler::chance(std::uint64_t points_each, int replicates) const {
  std::vector<SampleTally> tallies;
  for (int replicate = 0; replicate < std::max(2, replicates); ++replicate) {
    tallies.push_back(run({replicate, 0, std::max<std::uint64_t>(1, points_each)}));
  }
  return combined_chance(tallies);
}

SampledChance combined_chance(const std::vector<SampleTally>& replicates) {
  SampledChance chance;
  double sum = 0;
  double squares = 0;
  for (const auto& tally : replicates) {
    const double share = static_cast<double>(tally.failures) / static_cast<double>(tally.samples);
    sum += share;
    squares += share * share;
    chance.samples += tally.samples;
    chance.unanswered += tally.unanswered;
  }
  const auto count = static_cast<double>(replicates.size());
  chance.probability = sum / count;
  const double variance = std::max(0.0, squares / count - chance.probability * chance.probability);
  chance.standard_error =
      std::max(std::sqrt(variance / (count - 1)), 1 / static_cast<double>(chance.samples));
  return chance;
}

}  // namespace proofstone
