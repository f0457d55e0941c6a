#pragma once

#include "piles/look.h"

namespace proofstone::piles {

/// Sun and sky in linear light; a white surface flat under the open sky gives back about 1.
class Sky {
 public:
  Sky(const PictureLight& light, const Vec3& up);

  /// Light from a direction of the sky, the sun's disc left out.
  Vec3 seen(const Vec3& direction) const;
  /// Light of the sun on a surface square to it; black where it does not shine.
  const Vec3& sunlight() const { return sunlight_; }
  const Vec3& to_sun() const { return to_sun_; }
  /// A direction to a point of the sun's disc; the two shares say which.
  Vec3 to_sun_disc(float first, float second) const;
  const Vec3& up() const { return up_; }

 private:
  Vec3 up_;
  Vec3 to_sun_;
  Vec3 across_sun_;
  Vec3 beside_sun_;
  Vec3 sunlight_{0, 0, 0};
  Vec3 zenith_;
  Vec3 horizon_;
  float glow_ = 0;
};

}  // namespace proofstone::piles
