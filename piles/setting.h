#pragma once

#include "piles/look.h"
#include "piles/view.h"

namespace proofstone::piles {

/// A thing of known size that lies in view.
struct ScaleObject {
  std::string kind;  ///< "ball", "board" or "rule"
  float size = 0;    ///< diameter, side of a square, length; metres
  /// Middle of a ball; corners of a board's squares, clockwise from its own lower left; ends of a
  /// rule.
  std::vector<Vec3> points;
};

/// Adds ground, fines and things as the look has them to a scene that holds the stones, and tells
/// what lies there for scale. The caller finishes the scene.
std::vector<ScaleObject> add_setting(Scene& scene, const Pile& pile, const PileSurface& surface,
                                     const View& view, const PictureLook& look);

}  // namespace proofstone::piles
