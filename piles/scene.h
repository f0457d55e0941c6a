#pragma once

#include <embree3/rtcore.h>

#include <optional>
#include <vector>

#include "piles/camera.h"
#include "piles/pile.h"

namespace proofstone::piles {

/// What a thing that is no stone is made of.
enum class ThingMaterial {
  soil,       ///< bare ground
  turf,       ///< ground with short grass
  fines,      ///< what lies between the stones
  ball,       ///< plain colour, slightly glossy
  checkered,  ///< squares of `square` metres in black and white within a white margin
  rule,       ///< inches in turn light and dark
  steel,
  leather,
  rubber,
  grass,
  fabric,  ///< woven geotextile
};

/// A thing that is no stone. Corners of its texture are metres along its own axes.
struct Thing {
  ThingMaterial material = ThingMaterial::soil;
  TriangleMesh mesh;
  Vec3 colour{0.5F, 0.5F, 0.5F};
  btTransform pose = btTransform::getIdentity();  ///< takes its own axes to the place
  float square = 0.05F;
};

/// What a ray meets first.
struct Hit {
  float distance = 0;
  Vec3 at;
  Vec3 normal;           ///< of the triangle, against the ray
  std::size_t body = 0;  ///< a stone below the number of stones, then things
};

/// Stones and things as rays meet them. Stones and things may be added until `finish`.
class Scene {
 public:
  Scene();
  ~Scene();
  Scene(const Scene&) = delete;
  Scene& operator=(const Scene&) = delete;

  /// Adds the stones of the pile in their order, before any thing, for a camera: those in its view
  /// as finely as it shows, the others coarsely.
  void add_stones(const Pile& pile, const Camera& camera);
  /// Adds them all so that `length` is the smallest that matters.
  void add_stones(const Pile& pile, float length);
  void add_thing(Thing thing);
  void finish();

  std::optional<Hit> first_hit(const Vec3& from, const Vec3& direction) const;
  bool blocked(const Vec3& from, const Vec3& direction) const;

  std::size_t stones() const { return stones_; }
  bool is_stone(const Hit& hit) const { return hit.body < stones_; }
  const Thing& thing(const Hit& hit) const { return things_[hit.body - stones_]; }
  const std::vector<Thing>& things() const { return things_; }

 private:
  void add_mesh(const TriangleMesh& mesh, const btTransform& pose);

  RTCDevice device_;
  RTCScene scene_;
  std::size_t stones_ = 0;
  std::vector<Thing> things_;
};

}  // namespace proofstone::piles
