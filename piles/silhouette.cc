#include "piles/silhouette.h"

#include "engine/vision/picture_geometry.h"

namespace proofstone::piles {

double silhouette_area(const Stone& stone, const btTransform& pose, const Camera& camera) {
  std::vector<PhotoPoint> seen;
  for (const auto& part : stone.body.hulls()) {
    for (const Vec3& point : part) {
      const auto at = camera.seen_at(pose * point);
      if (!at) return 0;
      seen.push_back({at->x(), at->y()});
    }
  }
  const auto piece = piece_of_outline(convex_hull(std::move(seen)), "");
  return piece ? piece->area : 0;
}

}  // namespace proofstone::piles
