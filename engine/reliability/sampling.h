#pragma once

#include <cstdint>
#include <vector>

#include "engine/reliability/score_space.h"

namespace proofstone {

/// A piece of a simulation. Replicates are independent of each other; within one, the points follow
/// each other evenly, so that any division into slices gives the same points.
struct SampleSlice {
  int replicate = 0;
  std::uint64_t first = 0;
  std::uint64_t count = 0;
};

/// What came of the samples of one slice.
struct SampleTally {
  std::uint64_t samples = 0;
  std::uint64_t failures = 0;  ///< margin not above 0; those without an answer are among them
  std::uint64_t unanswered = 0;

  SampleTally& operator+=(const SampleTally& other);
};

/// A chance found by sampling.
struct SampledChance {
  double probability = 0;
  /// Standard error from the spread between the replicates; never below one sample in all.
  double standard_error = 0;
  std::uint64_t samples = 0;
  std::uint64_t unanswered = 0;  ///< counted as failures, which is the careful side
};

/// Quasi-random simulation of a limit state: Sobol points (low-discrepancy, with the direction
/// numbers of Boost.Random), shifted at random for each replicate (digital shift, Cranley–Patterson
/// in base 2), so that the replicates give an honest error. The same slice gives the same tally on
/// every machine. The engine has no threads: a shell may run slices side by side, since `run`
/// changes nothing.
class Sampler {
 public:
  /// `space` must outlive the sampler.
  explicit Sampler(const ScoreSpace& space) : space_(&space) {}

  SampleTally run(const SampleSlice& slice) const;
  /// All replicates one after the other. At least two replicates and one point.
  SampledChance chance(std::uint64_t points_each, int replicates = usual_replicates) const;

  static constexpr int usual_replicates = 16;

 private:
  const ScoreSpace* space_;
};

/// Brings the tallies of the replicates (each the sum of its slices) to one chance.
SampledChance combined_chance(const std::vector<SampleTally>& replicates);

}  // namespace proofstone
