#include "piles/sky.h"

#include <algorithm>
#include <cmath>

namespace proofstone::piles {
namespace {

// The sun is a quarter of a degree in half width; thin cloud widens its light.
constexpr float sun_half_width = 0.0047F;

}  // namespace

Sky::Sky(const PictureLight& light, const Vec3& up) : up_(up.normalized()) {
  // x of the place is level; the horizon's other direction is up the slope.
  const Vec3 level(1, 0, 0);
  const Vec3 away = up_.cross(level).normalized();
  const float flat = std::cos(light.sun_elevation);
  to_sun_ = (level * (flat * std::cos(light.sun_azimuth)) +
             away * (flat * std::sin(light.sun_azimuth)) + up_ * std::sin(light.sun_elevation))
                .normalized();
  btPlaneSpace1(to_sun_, across_sun_, beside_sun_);
  const float spread = sun_half_width * (1 + 6 * light.haze);
  across_sun_ *= spread;
  beside_sun_ *= spread;
  if (!light.sunny) {
    zenith_ = {0.42F, 0.43F, 0.45F};
    horizon_ = zenith_ / 3;
    return;
  }
  const float lowness = smooth_step(0.7F, 0.1F, light.sun_elevation);
  const Vec3 colour = mixed_colour({1, 0.95F, 0.87F}, {1, 0.78F, 0.55F}, lowness);
  sunlight_ = colour * (2.9F * (1 - light.haze));
  zenith_ = mixed_colour({0.09F, 0.15F, 0.27F}, {0.28F, 0.3F, 0.33F}, light.haze);
  horizon_ = mixed_colour({0.2F, 0.24F, 0.29F}, {0.33F, 0.34F, 0.35F}, light.haze);
  glow_ = 0.6F * (0.3F + light.haze);
}

Vec3 Sky::seen(const Vec3& direction) const {
  const float height = std::max(0.0F, direction.dot(up_));
  const Vec3 sky = mixed_colour(horizon_, zenith_, std::sqrt(height));
  if (glow_ == 0) return sky;
  const float near_sun = std::max(0.0F, direction.dot(to_sun_));
  const float power = near_sun * near_sun;
  return sky + sunlight_ * (glow_ * 0.12F * power * power * power);
}

Vec3 Sky::to_sun_disc(float first, float second) const {
  const float radius = std::sqrt(first);
  const float turn = SIMD_2_PI * second;
  return (to_sun_ + across_sun_ * (radius * std::cos(turn)) +
          beside_sun_ * (radius * std::sin(turn)))
      .normalized();
}

}  // namespace proofstone::piles
