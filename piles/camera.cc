#include "piles/camera.h"

#include <cmath>

namespace proofstone::piles {

float phone_focal_pixels(int width, int height) {
  const float diagonal = std::hypot(static_cast<float>(width), static_cast<float>(height));
  return 26.0F / std::hypot(36.0F, 24.0F) * diagonal;
}

Camera Camera::looking(const Vec3& position, const Vec3& target, const Vec3& up, int width,
                       int height) {
  Camera camera;
  camera.position = position;
  camera.forward = (target - position).normalized();
  camera.right = camera.forward.cross(up).normalized();
  camera.down = camera.forward.cross(camera.right);
  camera.focal_pixels = phone_focal_pixels(width, height);
  camera.width = width;
  camera.height = height;
  return camera;
}

std::optional<Vec3> Camera::seen_at(const Vec3& point) const {
  const Vec3 from = point - position;
  const float depth = from.dot(forward);
  if (depth <= 0) return std::nullopt;
  return Vec3(0.5F * static_cast<float>(width) + focal_pixels * from.dot(right) / depth,
              0.5F * static_cast<float>(height) + focal_pixels * from.dot(down) / depth, depth);
}

}  // namespace proofstone::piles
