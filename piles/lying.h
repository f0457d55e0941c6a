#pragma once

#include "piles/surface_map.h"

namespace proofstone::piles {

/// The centre of a ball that was laid on the rock near x, y and rolled to rest.
Vec3 ball_at_rest(const SurfaceMap& map, float x, float y, float radius);

float highest_within(const SurfaceMap& map, float x, float y, float radius);

/// A flat thing on the rock.
struct LyingFlat {
  btTransform pose = btTransform::getIdentity();  ///< z is its normal, x its heading
  float gap = 0;  ///< how far it stands off the mean surface under it
};

/// A rectangle laid near `at`, its x axis turned by `turn` from that of the place; it lies along
/// the mean surface and touches the highest point under it.
LyingFlat lie_flat(const SurfaceMap& map, const Vec3& at, float turn, float half_x, float half_y);

/// A square sheet dropped over the rock.
Thing draped(const SurfaceMap& map, const Vec3& middle, float half, float turn, const Vec3& colour);

}  // namespace proofstone::piles
