#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "piles/outline_trial.h"

namespace proofstone::piles {

/// For each pile the one beside it that was made of the same rock by another seed; none where that
/// one is missing.
std::vector<const TriedPile*> of_same_rock(const std::vector<TriedPile>& piles);

/// Size as photographed over that of the pile at one percent of the mass; deviations are standard
/// deviations of the logarithm.
struct LayerFactor {
  std::size_t rocks = 0;
  double ratio = 1;
  double between_rocks = 0;
  double between_layers = 0;  ///< two of one rock
  double sampling = 0;        ///< as those photos state it

  /// The error that the factor leaves on a rock not seen yet, so that 1.645 of it hold nine of ten:
  /// from rock to rock, by Student's t, and of the mean itself.
  double error() const;
};

/// Factors of layers from pairs of one rock, each layer by four photos of a view together.
class LayerFactors {
 public:
  /// Precondition: `piles` outlives this.
  explicit LayerFactors(const std::vector<TriedPile>& piles, SizesBy by = SizesBy::network);

  /// From all rocks but that of one pile; null: from all. At one of `tried_percents`. Nothing from
  /// fewer than three rocks.
  std::optional<LayerFactor> without(const TriedPile* pile, PhotoView view, int percent) const;

  /// The factors, and beside them those that the engine uses; a table of Markdown.
  std::string table() const;

 private:
  struct LayerSeen {
    double log_ratio = 0;
    double sampling_error = 0;
  };
  using Seen = std::array<LayerSeen, tried_percents.size()>;
  struct Pair {
    const TriedPile* one;
    const TriedPile* other;
    PhotoView view;
    Seen seen_of_one;
    Seen seen_of_other;
  };
  std::optional<Seen> layer_seen(const TriedPile& pile, PhotoView view) const;

  SizesBy by_;
  std::vector<Pair> pairs_;
};

}  // namespace proofstone::piles
