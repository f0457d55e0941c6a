#pragma once

#include <functional>

#include "engine/finding/outcome.h"
#include "engine/mix/filled_mix.h"

namespace proofstone {

/// A recipe of whole buckets that was found for the materials on offer.
struct MixRecipe {
  int rock_buckets = 0;
  std::vector<int> fill_buckets;  ///< one a fill; 0 where it is left out
  MixBalance balance;
  int buckets() const;
};

/// What a recipe keeps beside the contact of its rock.
struct MixFitness {
  Outcome as_filter = Outcome::not_yet_known;  ///< over the soil below
  Outcome stability = Outcome::not_yet_known;  ///< of its own fine grains
  int criteria_kept = 0;                       ///< of internal stability
};

/// Judges a recipe, given as a mix of the fills that it takes, with its balance.
using MixJudge = std::function<MixFitness(const FilledMix&, const MixBalance&)>;

/// A recipe and how many of those looked at keep what. Recipes that are multiples of another count
/// once; `full` are those that keep the contact and fill `least_filling` of the voids.
struct MixDesign {
  MixRecipe recipe;
  MixFitness fitness;
  Problems left_out;  ///< fills that could not be designed with; `where` names each
  int full = 0;
  int full_as_filter = 0;
  int full_stable = 0;
  int full_both = 0;
  /// Where nothing fills the voids and keeps the contact: the least dilation of what fills them.
  std::optional<double> dilation_to_fill;
};

/// The recipe of at most `most_buckets` (2 to 20) without more fill than the voids hold and, where
/// rock and fill are mixed before placing, without a dilation above `most_dilation`. Of those that
/// fill `least_filling` of the voids, the one that is most of a filter, then most stable; where
/// none fills so much, of the fullest. Of recipes that are alike in that, the fullest; of those
/// that fill alike (to 0.01), the one with fewest buckets. Without a judge all are alike. The parts
/// of `mix` do not matter. A fill that cannot be computed, that the packing model does not reach or
/// that is too coarse to be washed in is left out alone. Problems: rock of that kind, no fill that
/// is left, a bucket count without meaning, nothing that fits.
Expected<MixDesign> design_mix(const FilledMix& mix, int most_buckets = 12,
                               const MixJudge& judge = nullptr);

/// The mix with the parts of a recipe; fills that are left out are dropped.
FilledMix with_recipe(const FilledMix& mix, const MixRecipe& recipe);

}  // namespace proofstone
