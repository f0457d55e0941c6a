#include "piles/lying.h"

#include <algorithm>
#include <cmath>

#include "piles/noise.h"

namespace proofstone::piles {
namespace {

/// Runs over points of a rectangle around `at`; `visit` gets them along and across.
template <class Visit>
void over_rectangle(float half_x, float half_y, float step, Visit visit) {
  for (float along = -half_x; along <= half_x; along += step) {
    for (float across = -half_y; across <= half_y; across += step) visit(along, across);
  }
}

}  // namespace

Vec3 ball_at_rest(const SurfaceMap& map, float x, float y, float radius) {
  float centre = map.ball_centre(x, y, radius);
  for (float step = 0.25F * radius; step > map.cell() / 4;) {
    bool lower = false;
    for (int way = 0; way < 8; ++way) {
      const float turn = SIMD_2_PI * static_cast<float>(way) / 8;
      const float try_x = x + step * std::cos(turn);
      const float try_y = y + step * std::sin(turn);
      const float there = map.ball_centre(try_x, try_y, radius);
      if (there < centre - 1e-4F) {
        x = try_x;
        y = try_y;
        centre = there;
        lower = true;
        break;
      }
    }
    if (!lower) step *= 0.5F;
  }
  return {x, y, centre};
}

float highest_within(const SurfaceMap& map, float x, float y, float radius) {
  float highest = 0;
  over_rectangle(radius, radius, map.cell(), [&](float along, float across) {
    highest = std::max(highest, map.height(x + along, y + across));
  });
  return highest;
}

LyingFlat lie_flat(const SurfaceMap& map, const Vec3& at, float turn, float half_x, float half_y) {
  const SurfaceMap::Plane plane = map.plane_at(at.x(), at.y(), half_x);
  const Vec3 heading(std::cos(turn), std::sin(turn), 0);
  const Vec3 along = (heading - plane.normal * heading.dot(plane.normal)).normalized();
  const Vec3 across = plane.normal.cross(along);
  LyingFlat lying;
  over_rectangle(half_x, half_y, map.cell(), [&](float u, float v) {
    const Vec3 on_plane = plane.point + along * u + across * v;
    const float above = map.height(on_plane.x(), on_plane.y()) - on_plane.z();
    lying.gap = std::max(lying.gap, above * plane.normal.z());
  });
  const btMatrix3x3 axes(along.x(), across.x(), plane.normal.x(), along.y(), across.y(),
                         plane.normal.y(), along.z(), across.z(), plane.normal.z());
  lying.pose = btTransform(axes, plane.point + plane.normal * lying.gap);
  return lying;
}

Thing draped(const SurfaceMap& map, const Vec3& middle, float half, float turn,
             const Vec3& colour) {
  Thing sheet{ThingMaterial::fabric, {}, colour};
  constexpr unsigned cells = 48;
  const Vec3 along(std::cos(turn), std::sin(turn), 0);
  const Vec3 across(-along.y(), along.x(), 0);
  const float step = 2 * half / cells;
  for (unsigned row = 0; row <= cells; ++row) {
    for (unsigned column = 0; column <= cells; ++column) {
      Vec3 at = middle + along * (static_cast<float>(column) * step - half) +
                across * (static_cast<float>(row) * step - half);
      // It spans hollows narrower than its stiffness, and folds a little.
      float height = 0;
      for (const float reach : {step, 2.5F * step}) {
        height += 0.5F * highest_within(map, at.x(), at.y(), reach);
      }
      const float fold = 0.012F * noise(at / 0.11F, 77).value;
      at.setZ(std::max(highest_within(map, at.x(), at.y(), 0.6F * step), height) + 0.008F +
              std::abs(fold));
      sheet.mesh.points.push_back(at);
    }
  }
  for (unsigned row = 0; row < cells; ++row) {
    for (unsigned column = 0; column < cells; ++column) {
      const unsigned corner = row * (cells + 1) + column;
      sheet.mesh.triangles.push_back({corner, corner + 1, corner + cells + 1});
      sheet.mesh.triangles.push_back({corner + 1, corner + cells + 2, corner + cells + 1});
    }
  }
  return sheet;
}

}  // namespace proofstone::piles
