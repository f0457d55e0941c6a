#pragma once

#include <vector>

#include "piles/asked_gradation.h"
#include "piles/rock_body.h"
#include "piles/stone_measure.h"

namespace proofstone::piles {

/// One stone with its true size, in metres.
struct Stone {
  RockBody body;
  StoneMeasure measure;
  /// As the gradation of the pile means it: the b axis, or the sphere of the same volume.
  float size = 0;
};

/// What forms the stones of a pile have.
enum class RockMix {
  quarried,   ///< blocks and wedges, some slabs and notched stones
  slabs,      ///< mostly slabs
  river,      ///< rounded
  mixed,      ///< quarried and rounded
  splinters,  ///< hulls of random points alone, as the facts of photo measurement were found with
};

/// `count` stones of the gradation; axis ratios b/a of 0.71 and c/b of 0.67 on average, both with a
/// standard deviation of about 0.10, and c/b of 0.40 in slabs.
std::vector<Stone> make_stones(const AskedGradation& gradation, RockMix mix, int count,
                               unsigned seed);

/// Percent of the volume in stones smaller than `size`.
double percent_smaller(const std::vector<const Stone*>& stones, float size);
/// The size of which `percent` of the volume is smaller, between the stones next to it.
float size_at(const std::vector<const Stone*>& stones, double percent);

}  // namespace proofstone::piles
