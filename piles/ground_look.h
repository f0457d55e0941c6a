#pragma once

#include <cstdint>

#include "piles/scene.h"

namespace proofstone::piles {

/// A point of something that is no stone.
struct ThingPoint {
  Vec3 at;  ///< in the place, metres
  Vec3 normal;
  Vec3 own;  ///< along the axes of the thing
  float footprint = 0;
};

Vec3 thing_colour(const Thing& thing, const ThingPoint& point, std::uint32_t seed);
/// The slope of its fine relief.
Vec3 thing_relief(const Thing& thing, const ThingPoint& point, std::uint32_t seed);
float thing_gloss(ThingMaterial material);

}  // namespace proofstone::piles
