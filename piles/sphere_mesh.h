#pragma once

#include <array>
#include <vector>

#include "piles/vec3.h"

namespace proofstone::piles {

/// A surface of triangles; corners run anticlockwise seen from outside.
struct TriangleMesh {
  std::vector<Vec3> points;
  std::vector<std::array<unsigned, 3>> triangles;
};

/// A unit sphere of 10·4^level + 2 points, evenly spread. Precondition: 0 ≤ level ≤ 6.
const TriangleMesh& sphere_mesh(int level);

}  // namespace proofstone::piles
