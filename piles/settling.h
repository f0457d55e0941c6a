#pragma once

#include <vector>

#include "piles/stone.h"

namespace proofstone::piles {

/// How rock comes to lie.
enum class PileKind {
  layer,  ///< spread between walls that are out of the picture, then tilted to its slope
  heap,   ///< poured at one point on level ground
  truck,  ///< poured into a truck bed
};

/// The place that rock is dropped into; lengths in metres. x runs along the layer, y up its slope,
/// z out of it.
struct Place {
  PileKind kind = PileKind::layer;
  float length = 0;  ///< along x, between walls; unused by a heap
  float width = 0;   ///< along y
  float slope = 0;   ///< of a layer after the stones lie flat, in radians
};

/// Lets stones fall into the place until they rest; where each lies, in the order of `stones`. The
/// pose takes points of the stone's body to the place. The same input gives the same poses.
std::vector<btTransform> settle(const std::vector<Stone>& stones, const Place& place, float d50,
                                unsigned seed);

}  // namespace proofstone::piles
