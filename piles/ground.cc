#include "piles/ground.h"

#include <cmath>

#include "piles/noise.h"
#include "piles/things.h"

namespace proofstone::piles {
namespace {

constexpr float far_away = 2000;

void add_bank(Scene& scene, const Pile& pile, ThingMaterial material, const Vec3& colour) {
  const float slope = pile.request.place.slope;
  const Vec3 outward(0, -std::cos(slope), std::sin(slope));
  const float foot = -0.5F * pile.request.place.width - 0.4F * pile.d50();
  const float crest = 0.5F * pile.request.place.width + 1.5F * pile.d50();
  const Vec3 left(-far_away, 0, 0);
  const Vec3 right(far_away, 0, 0);
  const Vec3 at_foot(0, foot, 0);
  const Vec3 at_crest(0, crest, 0);
  scene.add_thing({ThingMaterial::soil,
                   patch_mesh(at_foot + left, at_foot + right, at_crest + right, at_crest + left),
                   colour});
  const Vec3 before = at_foot + outward * far_away;
  scene.add_thing({material,
                   patch_mesh(before + left, before + right, at_foot + right, at_foot + left),
                   colour});
  const Vec3 behind = at_crest - outward * far_away;
  scene.add_thing({material,
                   patch_mesh(at_crest + left, at_crest + right, behind + right, behind + left),
                   colour});
}

void add_level(Scene& scene, float height, ThingMaterial material, const Vec3& colour) {
  scene.add_thing({material,
                   patch_mesh({-far_away, -far_away, height}, {far_away, -far_away, height},
                              {far_away, far_away, height}, {-far_away, far_away, height}),
                   colour});
}

void add_truck_bed(Scene& scene, const Place& place) {
  const float x = place.length / 2;
  const float y = place.width / 2;
  const float high = 0.26F * place.width;
  const float thick = 0.02F * place.width;
  const Vec3 paint(0.22F, 0.2F, 0.08F);
  const auto wall = [&](const Vec3& middle, const Vec3& half) {
    Thing thing{ThingMaterial::steel, box_mesh(half), paint};
    thing.pose.setOrigin(middle);
    scene.add_thing(std::move(thing));
  };
  wall({0, 0, -thick}, {x + 2 * thick, y + 2 * thick, thick});
  wall({x + thick, 0, high}, {thick, y + 2 * thick, high});
  wall({-x - thick, 0, high}, {thick, y + 2 * thick, high});
  wall({0, y + thick, high}, {x, thick, high});
  wall({0, -y - thick, high}, {x, thick, high});
}

}  // namespace

void add_ground(Scene& scene, const Pile& pile, const PictureLook& look) {
  const ThingMaterial material = look.turf ? ThingMaterial::turf : ThingMaterial::soil;
  const Vec3 colour = look.turf ? Vec3(0.14F, 0.15F, 0.06F) : look.fines_colour;
  switch (pile.request.place.kind) {
    case PileKind::layer:
      add_bank(scene, pile, material, colour);
      return;
    case PileKind::heap:
      add_level(scene, 0, material, colour);
      return;
    case PileKind::truck:
      add_level(scene, -1.3F, material, colour);
      add_truck_bed(scene, pile.request.place);
      return;
  }
}

Fines::Fines(const Pile& pile, const PileSurface& surface, const PictureLook& look)
    : smooth_(surface.map.averaged(0.8F * pile.d50())),
      colour_(look.fines_colour),
      depth_(pile.d50() * (1.0F - 0.62F * look.fines)),
      d50_(pile.d50()),
      half_x_(surface.map.half_x()),
      half_y_(surface.map.half_y()),
      seed_(look.seed) {
  const Place& place = pile.request.place;
  if (place.kind != PileKind::truck) return;
  half_x_ = place.length / 2;
  half_y_ = place.width / 2;
}

float Fines::height(float x, float y) const {
  const float uneven = 0.12F * d50_ * layered_noise(Vec3(x, y, 0) / (0.6F * d50_), seed_, 4).value;
  return std::max(-0.02F * d50_, smooth_.height(x, y) - depth_ + uneven);
}

Thing Fines::thing() const {
  Thing fines{ThingMaterial::fines, {}, colour_};
  const float cell = 0.1F * d50_;
  const auto columns = static_cast<unsigned>(2 * half_x_ / cell);
  const auto rows = static_cast<unsigned>(2 * half_y_ / cell);
  for (unsigned row = 0; row <= rows; ++row) {
    for (unsigned column = 0; column <= columns; ++column) {
      const float x = static_cast<float>(column) * cell - half_x_;
      const float y = static_cast<float>(row) * cell - half_y_;
      fines.mesh.points.emplace_back(x, y, height(x, y));
    }
  }
  for (unsigned row = 0; row < rows; ++row) {
    for (unsigned column = 0; column < columns; ++column) {
      const unsigned corner = row * (columns + 1) + column;
      fines.mesh.triangles.push_back({corner, corner + 1, corner + columns + 1});
      fines.mesh.triangles.push_back({corner + 1, corner + columns + 2, corner + columns + 1});
    }
  }
  return fines;
}

}  // namespace proofstone::piles
