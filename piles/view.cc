#include "piles/view.h"

#include <algorithm>
#include <cmath>

#include "piles/noise.h"

namespace proofstone::piles {
namespace {

/// How far out the rock lies of which so much lies nearer.
float reach(std::vector<float> distances, double share) {
  std::sort(distances.begin(), distances.end());
  return distances[static_cast<std::size_t>(share * static_cast<double>(distances.size() - 1))];
}

Vec3 turned(const Vec3& vector, const Vec3& axis, float angle) {
  return vector.rotate(axis, angle);
}

class ViewDraws {
 public:
  explicit ViewDraws(unsigned seed) : draws_(mixed_seed(seed, 300)) {}
  float between(float low, float high) {
    return low + (high - low) * static_cast<float>(draws_.uniform());
  }
  /// A place within so much of the middle, either way.
  float within(float most) { return between(-1, 1) * std::max(0.0F, most); }

 private:
  Draws draws_;
};

/// Where the middle of the picture lies, and which way somebody who looks at it stands.
struct Stand {
  float x = 0;
  float y = 0;
  Vec3 towards_viewer;
};

Stand draw_stand(const Pile& pile, const PileSurface& surface, const ViewRequest& request,
                 ViewDraws& draws) {
  const float frame = request.frame_in_d50 * pile.d50();
  const float tall = frame * static_cast<float>(request.height) / static_cast<float>(request.width);
  if (pile.request.place.kind == PileKind::heap) {
    const float side = draws.between(0, SIMD_2_PI);
    const Vec3 out(std::cos(side), std::sin(side), 0);
    const float from_middle =
        draws.between(0.3F, 0.5F) * std::min(surface.reach_x, surface.reach_y);
    return {out.x() * from_middle, out.y() * from_middle, out};
  }
  const float side = draws.within(0.35F);
  Stand stand;
  if (request.quarter) {
    stand.x = (*request.quarter % 2 == 0 ? -0.5F : 0.5F) * frame;
    stand.y = (*request.quarter < 2 ? -0.5F : 0.5F) * tall;
  } else {
    stand.x = draws.within(surface.reach_x - 0.5F * frame);
    stand.y = draws.within(surface.reach_y - 0.5F * tall);
  }
  stand.towards_viewer = {std::sin(side), -std::cos(side), 0};
  return stand;
}

}  // namespace

PileSurface survey_surface(const Pile& pile) {
  std::vector<float> x;
  std::vector<float> y;
  for (std::size_t i = 0; i < pile.stones.size(); ++i) {
    x.push_back(std::abs(pile.centre(i).x()));
    y.push_back(std::abs(pile.centre(i).y()));
  }
  Scene scene;
  scene.add_stones(pile, pile.d50() / 32);
  scene.finish();
  const float margin = pile.d50();
  const SurfaceMap map(scene, reach(x, 1) + margin, reach(y, 1) + margin, pile.d50() / 16);
  return {map, map.averaged(2 * pile.d50()), reach(x, 0.97), reach(y, 0.97)};
}

std::vector<const Stone*> surface_stones(const Pile& pile, const PileSurface& surface) {
  std::vector<const Stone*> found;
  for (std::size_t i = 0; i < pile.stones.size(); ++i) {
    const Vec3 at = pile.centre(i);
    if (at.z() > surface.mean.height(at.x(), at.y()) - 0.6F * pile.d50()) {
      found.push_back(&pile.stones[i]);
    }
  }
  return found;
}

View draw_view(const Pile& pile, const PileSurface& surface, const ViewRequest& request,
               unsigned seed) {
  ViewDraws draws(seed);
  const float frame = request.frame_in_d50 * pile.d50();
  const Stand stand = draw_stand(pile, surface, request, draws);
  View view;
  view.quarter = request.quarter;
  const float around = std::min(0.45F * frame, 0.6F * std::min(surface.reach_x, surface.reach_y));
  view.plane = surface.map.plane_at(stand.x, stand.y, around);
  view.target = view.plane.point;

  const bool straight = request.kind == ViewKind::straight;
  constexpr float degree = SIMD_PI / 180;
  const float lean =
      straight ? std::abs(draws.within(10)) * degree : draws.between(36, 52) * degree;
  const Vec3 sideways = view.plane.normal.cross(stand.towards_viewer).normalized();
  Vec3 to_camera = turned(view.plane.normal, sideways, lean);
  if (straight) to_camera = turned(to_camera, view.plane.normal, draws.between(0, SIMD_2_PI));

  view.distance =
      frame * phone_focal_pixels(request.width, request.height) / static_cast<float>(request.width);
  const float roll = draws.within(6) * degree;
  const Vec3 top = turned(-stand.towards_viewer, to_camera, roll);
  view.camera = Camera::looking(view.target + to_camera * view.distance, view.target, top,
                                request.width, request.height);
  view.angle = std::acos(std::min(1.0F, to_camera.dot(view.plane.normal)));
  return view;
}

}  // namespace proofstone::piles
