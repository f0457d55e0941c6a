#pragma once

#include <optional>

#include "piles/vec3.h"

namespace proofstone::piles {

/// A pinhole camera without distortion. In the picture x runs to the right and y down, in pixels;
/// the middle of the first pixel is at 0.5, 0.5.
struct Camera {
  Vec3 position{0, 0, 0};
  Vec3 right{1, 0, 0};
  Vec3 down{0, -1, 0};
  Vec3 forward{0, 0, -1};
  float focal_pixels = 0;
  int width = 0;
  int height = 0;

  /// At `position`, looking at `target`, its top towards `up`.
  static Camera looking(const Vec3& position, const Vec3& target, const Vec3& up, int width,
                        int height);

  /// Unit vector to a point of the picture.
  Vec3 ray(float x, float y) const {
    const Vec3 ahead = forward * focal_pixels;
    return (ahead + right * (x - 0.5F * static_cast<float>(width)) +
            down * (y - 0.5F * static_cast<float>(height)))
        .normalized();
  }
  /// Where a point is seen, and its depth as z; nothing behind the camera.
  std::optional<Vec3> seen_at(const Vec3& point) const;
};

/// Of a phone whose lens is as wide as 26 mm on 36 × 24 mm (common practice), over the diagonal.
float phone_focal_pixels(int width, int height);

}  // namespace proofstone::piles
