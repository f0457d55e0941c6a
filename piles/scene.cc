#include "piles/scene.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace proofstone::piles {
namespace {

/// The level of a mesh whose triangles are about twice as long as `length`.
int mesh_level(float size, float length) {
  const float edge_at_level_0 = 0.55F * size;
  return std::clamp(static_cast<int>(std::ceil(std::log2(edge_at_level_0 / (2 * length)))), 2, 5);
}

/// Which stones a smaller picture of the same view shows.
std::vector<bool> stones_in_view(const Pile& pile, const Camera& camera) {
  Scene coarse;
  coarse.add_stones(pile, pile.d50() / 16);
  coarse.finish();
  constexpr int stride = 3;
  std::vector<bool> seen(pile.stones.size(), false);
  for (int row = 0; row < camera.height; row += stride) {
    for (int column = 0; column < camera.width; column += stride) {
      const Vec3 ray =
          camera.ray(static_cast<float>(column) + 0.5F, static_cast<float>(row) + 0.5F);
      const auto hit = coarse.first_hit(camera.position, ray);
      if (hit) seen[hit->body] = true;
    }
  }
  return seen;
}

RTCRay ray_of(const Vec3& from, const Vec3& direction) {
  RTCRay ray{};
  ray.org_x = from.x();
  ray.org_y = from.y();
  ray.org_z = from.z();
  ray.dir_x = direction.x();
  ray.dir_y = direction.y();
  ray.dir_z = direction.z();
  ray.tfar = std::numeric_limits<float>::infinity();
  ray.mask = ~0U;
  return ray;
}

}  // namespace

Scene::Scene() : device_(rtcNewDevice("threads=1")), scene_(rtcNewScene(device_)) {}

Scene::~Scene() {
  rtcReleaseScene(scene_);
  rtcReleaseDevice(device_);
}

void Scene::add_mesh(const TriangleMesh& mesh, const btTransform& pose) {
  RTCGeometry geometry = rtcNewGeometry(device_, RTC_GEOMETRY_TYPE_TRIANGLE);
  auto* points = static_cast<float*>(rtcSetNewGeometryBuffer(geometry, RTC_BUFFER_TYPE_VERTEX, 0,
                                                             RTC_FORMAT_FLOAT3, 3 * sizeof(float),
                                                             mesh.points.size()));
  for (const Vec3& point : mesh.points) {
    const Vec3 placed = pose * point;
    points = std::copy_n(placed.m_floats, 3, points);
  }
  auto* corners = static_cast<unsigned*>(
      rtcSetNewGeometryBuffer(geometry, RTC_BUFFER_TYPE_INDEX, 0, RTC_FORMAT_UINT3,
                              3 * sizeof(unsigned), mesh.triangles.size()));
  for (const auto& triangle : mesh.triangles) corners = std::copy_n(triangle.data(), 3, corners);
  rtcCommitGeometry(geometry);
  rtcAttachGeometry(scene_, geometry);
  rtcReleaseGeometry(geometry);
}

void Scene::add_stones(const Pile& pile, const Camera& camera) {
  const std::vector<bool> in_view = stones_in_view(pile, camera);
  for (std::size_t i = 0; i < pile.stones.size(); ++i) {
    const Stone& stone = pile.stones[i];
    const float away = (pile.centre(i) - camera.position).length();
    const int level = in_view[i] ? mesh_level(stone.measure.a, away / camera.focal_pixels) : 2;
    add_mesh(stone.body.mesh(level), pile.poses[i]);
  }
  stones_ = pile.stones.size();
}

void Scene::add_stones(const Pile& pile, float length) {
  for (std::size_t i = 0; i < pile.stones.size(); ++i) {
    const Stone& stone = pile.stones[i];
    add_mesh(stone.body.mesh(mesh_level(stone.measure.a, length)), pile.poses[i]);
  }
  stones_ = pile.stones.size();
}

void Scene::add_thing(Thing thing) {
  add_mesh(thing.mesh, thing.pose);
  things_.push_back(std::move(thing));
}

void Scene::finish() { rtcCommitScene(scene_); }

std::optional<Hit> Scene::first_hit(const Vec3& from, const Vec3& direction) const {
  RTCIntersectContext context;
  rtcInitIntersectContext(&context);
  RTCRayHit found{};
  found.ray = ray_of(from, direction);
  found.hit.geomID = RTC_INVALID_GEOMETRY_ID;
  rtcIntersect1(scene_, &context, &found);
  if (found.hit.geomID == RTC_INVALID_GEOMETRY_ID) return std::nullopt;
  Hit hit;
  hit.distance = found.ray.tfar;
  hit.at = from + direction * hit.distance;
  hit.normal = Vec3(found.hit.Ng_x, found.hit.Ng_y, found.hit.Ng_z).normalized();
  if (hit.normal.dot(direction) > 0) hit.normal = -hit.normal;
  hit.body = found.hit.geomID;
  return hit;
}

bool Scene::blocked(const Vec3& from, const Vec3& direction) const {
  RTCIntersectContext context;
  rtcInitIntersectContext(&context);
  RTCRay ray = ray_of(from, direction);
  rtcOccluded1(scene_, &context, &ray);
  return ray.tfar < 0;
}

}  // namespace proofstone::piles
