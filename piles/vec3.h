#pragma once

#include <LinearMath/btTransform.h>

namespace proofstone::piles {

/// A point, a direction or a linear-light colour. Bullet's own type, so that bodies need no copying
/// between physics and pictures; single precision.
using Vec3 = btVector3;

/// Component by component: light times colour.
inline Vec3 filtered(const Vec3& light, const Vec3& colour) { return light * colour; }

inline Vec3 mixed_colour(const Vec3& first, const Vec3& second, float share_of_second) {
  return first * (1 - share_of_second) + second * share_of_second;
}

/// 0 below `low`, 1 above `high`, smooth between.
inline float smooth_step(float low, float high, float at) {
  const float share = btClamped((at - low) / (high - low), 0.0F, 1.0F);
  return share * share * (3 - 2 * share);
}

}  // namespace proofstone::piles
