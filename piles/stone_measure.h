#pragma once

#include "piles/sphere_mesh.h"

namespace proofstone::piles {

/// What calipers and a bucket of water say of a stone: c is its smallest width, b its smallest
/// width at right angles to c, a its width at right angles to both.
struct StoneMeasure {
  float a = 0;
  float b = 0;
  float c = 0;
  float volume = 0;
  Vec3 centroid{0, 0, 0};
};

/// Widths are found to about 0.5 %; the volume is that of the mesh. Precondition: a closed mesh.
StoneMeasure measure_stone(const TriangleMesh& mesh);

}  // namespace proofstone::piles
