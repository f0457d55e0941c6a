#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "piles/sphere_mesh.h"
#include "simulation/draws.h"

namespace proofstone::piles {

/// What a stone looks like in the hand.
enum class RockShape {
  blocky,    ///< quarried, broken on several faces
  wedge,     ///< quarried, faces far from parallel
  slabby,    ///< split along bedding
  notched,   ///< two blocks in one: not convex
  rounded,   ///< worn in a river
  splinter,  ///< the hull of some random points: many faces, pointed corners
};

/// "blocky", "wedge" …
std::string_view rock_shape_name(RockShape shape);

/// A broken face: the half space n·x ≤ distance.
struct Facet {
  Vec3 normal;
  float distance = 0;
};

/// The form of a stone around its own origin: the union of convex parts that all hold the origin,
/// with edges that are worn, and a rough surface. Every ray from the origin meets it once.
class RockBody {
 public:
  /// `longest` ≥ `middle` ≥ `shortest` are the axes aimed at; measure what came of them.
  static RockBody make(RockShape shape, const Vec3& axes, Draws& draws);

  /// From the origin to the surface in a direction of unit length.
  float radius(const Vec3& direction) const;
  /// Outward normal of the unroughened surface at a point of it; edges are as sharp as the body's.
  Vec3 normal(const Vec3& at) const;
  /// The surface as a mesh with the triangles of `sphere_mesh(level)`.
  TriangleMesh mesh(int level) const;
  /// For every convex part, points on its surface whose hull is that part but for little.
  std::vector<std::vector<Vec3>> hulls() const;

  RockShape shape() const { return shape_; }
  std::uint32_t seed() const { return seed_; }
  /// Height of the roughness as a share of the middle axis.
  float roughness() const { return roughness_; }
  /// Multiplies all lengths.
  void scale(float factor);

 private:
  using Facets = std::vector<Facet>;
  float unroughened_radius(const Facets& part, const Vec3& direction) const;
  float roughened(float radius, const Vec3& direction) const;

  RockShape shape_ = RockShape::blocky;
  /// Unit vectors spread so that they meet the surface evenly: denser towards its far ends.
  Vec3 spread(const Vec3& direction) const { return filtered(direction, axes_).normalized(); }

  std::vector<Facets> parts_;
  Vec3 axes_{1, 1, 1};
  int halvings_of_wear_ = 6;  ///< edges are worn as the 2^n norm of the facets: 6 sharp, 2 round
  float roughness_ = 0;
  float size_ = 1;  ///< the middle axis, the unit of the roughness
  std::uint32_t seed_ = 0;
};

}  // namespace proofstone::piles
