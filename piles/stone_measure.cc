#include "piles/stone_measure.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace proofstone::piles {
namespace {

float width(const TriangleMesh& mesh, const Vec3& direction) {
  float low = std::numeric_limits<float>::max();
  float high = -low;
  for (const Vec3& point : mesh.points) {
    const float along = point.dot(direction);
    low = std::min(low, along);
    high = std::max(high, along);
  }
  return high - low;
}

struct Width {
  Vec3 direction{0, 0, 1};
  float value = std::numeric_limits<float>::max();
};

void keep_smaller(Width& smallest, const TriangleMesh& mesh, const Vec3& direction) {
  const float value = width(mesh, direction);
  if (value < smallest.value) smallest = {direction, value};
}

Width smallest_width(const TriangleMesh& mesh) {
  Width smallest;
  for (const Vec3& direction : sphere_mesh(2).points) {
    if (direction.z() >= 0) keep_smaller(smallest, mesh, direction);
  }
  // Around the best direction in ever smaller circles.
  for (float reach = 0.16F; reach > 0.01F; reach *= 0.6F) {
    Vec3 across;
    Vec3 beside;
    btPlaneSpace1(smallest.direction, across, beside);
    const Vec3 middle = smallest.direction;
    for (int step = 0; step < 8; ++step) {
      const float turn = static_cast<float>(step) * SIMD_PI / 4;
      const Vec3 moved = middle + (across * std::cos(turn) + beside * std::sin(turn)) * reach;
      keep_smaller(smallest, mesh, moved.normalized());
    }
  }
  return smallest;
}

Width smallest_width_across(const TriangleMesh& mesh, const Vec3& axis) {
  Vec3 across;
  Vec3 beside;
  btPlaneSpace1(axis, across, beside);
  Width smallest;
  constexpr int steps = 60;
  for (int step = 0; step < steps; ++step) {
    const float turn = static_cast<float>(step) * SIMD_PI / steps;
    keep_smaller(smallest, mesh, across * std::cos(turn) + beside * std::sin(turn));
  }
  return smallest;
}

}  // namespace

StoneMeasure measure_stone(const TriangleMesh& mesh) {
  StoneMeasure measure;
  const Width c = smallest_width(mesh);
  const Width b = smallest_width_across(mesh, c.direction);
  measure.c = c.value;
  measure.b = b.value;
  measure.a = width(mesh, c.direction.cross(b.direction).normalized());
  double volume = 0;
  Vec3 moment(0, 0, 0);
  for (const auto& [i, j, k] : mesh.triangles) {
    const Vec3& p = mesh.points[i];
    const Vec3& q = mesh.points[j];
    const Vec3& r = mesh.points[k];
    const float six_times = p.dot(q.cross(r));
    volume += six_times;
    moment += (p + q + r) * (six_times / 4);
  }
  measure.volume = static_cast<float>(volume / 6);
  measure.centroid = moment / static_cast<float>(volume);
  return measure;
}

}  // namespace proofstone::piles
