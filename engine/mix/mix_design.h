#pragma once

#include "engine/mix/filled_mix.h"

namespace proofstone {

/// A recipe of whole buckets that was found for the materials on offer.
struct MixRecipe {
  int rock_buckets = 0;
  std::vector<int> fill_buckets;  ///< one a fill; 0 where it is left out
  MixBalance balance;
  int buckets() const;
};

/// The recipe of at most `most_buckets` (2 to 20) that fills the voids furthest without more fill
/// than they hold and, where rock and fill are mixed before placing, without a dilation above
/// `most_dilation`; of recipes that fill alike (to 0.01) the one with fewest buckets. The parts of
/// `mix` do not matter. Problems: those of balance_of, rock or a fill that the packing model does
/// not reach, a bucket count without meaning, nothing that fits.
Expected<MixRecipe> design_mix(const FilledMix& mix, int most_buckets = 12);

/// The mix with the parts of a recipe; fills that are left out are dropped.
FilledMix with_recipe(const FilledMix& mix, const MixRecipe& recipe);

}  // namespace proofstone
