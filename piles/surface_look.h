#pragma once

#include "piles/look.h"
#include "piles/scene.h"

namespace proofstone::piles {

/// How a surface gives light back at one point.
struct SurfaceLook {
  Vec3 colour;      ///< share of the light that is scattered
  Vec3 normal;      ///< with its fine relief
  float gloss = 0;  ///< share of a mirror's light, seen straight on
};

/// What is seen of a pile: its stones under the look of the picture, and things around.
class SurfaceLooks {
 public:
  SurfaceLooks(const Pile& pile, const Scene& scene, const PictureLook& look);

  /// Where a camera looks. `footprint` is the width of a pixel there: finer relief is left out.
  SurfaceLook fine(const Hit& hit, float footprint) const;
  /// The mean colour of the body, for light that comes from it.
  Vec3 coarse_colour(const Hit& hit) const;

 private:
  SurfaceLook stone(const Hit& hit, float footprint) const;
  SurfaceLook thing(const Hit& hit, float footprint) const;
  Vec3 stone_colour(std::size_t index) const;

  const Pile& pile_;
  const Scene& scene_;
  const PictureLook& look_;
  Vec3 up_;
};

}  // namespace proofstone::piles
