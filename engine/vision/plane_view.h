#pragma once

#include <array>
#include <optional>
#include <span>

#include "engine/vision/picture_geometry.h"

namespace proofstone {

/// A place on a plane in metres, or in whatever it is measured in.
struct PlanePoint {
  double x = 0;
  double y = 0;
};

/// A place on a plane and where a picture shows it.
struct SeenPoint {
  PlanePoint on_plane;
  PhotoPoint on_picture;
};

/// How a picture shows a plane: the projective map from one to the other.
class PlaneView {
 public:
  /// Through four places or more, by least squares of the linear equations in normalised
  /// coordinates (Hartley and Zisserman, Multiple View Geometry, 2nd ed., section 4.4, from
  /// memory). None where three of four lie on a line, or numbers are none.
  static std::optional<PlaneView> through(std::span<const SeenPoint> seen);

  PhotoPoint on_picture(PlanePoint point) const;

  /// Pixels to a unit of the plane at a place, along the direction that is shown longest and along
  /// the one that is shown shortest. A plane that stands oblique is shortened in one direction by
  /// the cosine of its angle; the other tells the scale.
  struct Stretch {
    double longest = 0;
    double shortest = 0;
  };
  Stretch stretch_at(PlanePoint point) const;

  /// Root mean square of how far the picture's places are from where the map puts them, in pixels.
  double misfit(std::span<const SeenPoint> seen) const;

 private:
  std::array<double, 9> map_ = {};  ///< row by row
};

}  // namespace proofstone
