#pragma once

#include "piles/look.h"
#include "piles/view.h"

namespace proofstone::piles {

/// The ground around a pile: level, or a bank with its foot and its crest; under a truck its bed.
void add_ground(Scene& scene, const Pile& pile, const PictureLook& look);

/// What fills the voids from below: soil, grit and spalls too small to be stones of the pile.
class Fines {
 public:
  Fines(const Pile& pile, const PileSurface& surface, const PictureLook& look);
  float height(float x, float y) const;
  Thing thing() const;

 private:
  SurfaceMap smooth_;
  Vec3 colour_;
  float depth_;  ///< below the smoothed surface
  float d50_;
  float half_x_;  ///< it reaches so far; not through the walls of a truck bed
  float half_y_;
  unsigned seed_;
};

}  // namespace proofstone::piles
