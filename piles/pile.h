#pragma once

#include "piles/settling.h"

namespace proofstone::piles {

/// What is asked of a pile.
struct PileRequest {
  AskedGradation gradation;
  Place place;  ///< its length and width are worked out from the number of stones
  RockMix mix = RockMix::quarried;
  int stones = 500;
  unsigned seed = 1;
};

/// A pile of stones at rest, in the coordinates of its place (metres).
struct Pile {
  PileRequest request;
  std::vector<Stone> stones;
  std::vector<btTransform> poses;

  float d50() const { return static_cast<float>(request.gradation.d50().meters()); }
  /// Against gravity.
  Vec3 up() const;
  /// Where the centroid of a stone lies.
  Vec3 centre(std::size_t stone) const { return poses[stone] * stones[stone].measure.centroid; }
  std::vector<const Stone*> all() const;
};

/// How many such stones make a layer so many D50 long.
int stones_in_layer_of(float length_in_d50, const AskedGradation& gradation, RockMix mix,
                       unsigned seed);

/// The same request gives the same pile.
Pile make_pile(PileRequest request);

}  // namespace proofstone::piles
