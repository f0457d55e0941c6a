#pragma once

#include <optional>

#include "piles/camera.h"
#include "piles/surface_map.h"

namespace proofstone::piles {

/// The surface of a pile by itself: no ground, no things.
struct PileSurface {
  SurfaceMap map;
  SurfaceMap mean;    ///< the map averaged over about four D50
  float reach_x = 0;  ///< how far rock lies from the middle, but for stragglers
  float reach_y = 0;
};

PileSurface survey_surface(const Pile& pile);

/// Stones whose centroid lies above 0.6 D50 below the mean surface.
std::vector<const Stone*> surface_stones(const Pile& pile, const PileSurface& surface);

/// How the camera is held.
enum class ViewKind {
  straight,  ///< square to the face, within 10 degrees
  oblique,   ///< 36 to 52 degrees off, as somebody sees it who stands before the pile
};

/// What is asked of a view.
struct ViewRequest {
  ViewKind kind = ViewKind::straight;
  float frame_in_d50 = 7.5F;  ///< how much of the face a picture is wide, at its middle
  int width = 1024;
  int height = 768;
  /// Which of the four frames that lie side by side on a layer, 0 to 3; none: anywhere on it.
  std::optional<int> quarter = {};
};

/// A camera before a pile, and the mean plane of what it sees.
struct View {
  Camera camera;
  Vec3 target;
  SurfaceMap::Plane plane;
  float angle = 0;                  ///< between the camera's axis and the plane's normal, radians
  float distance = 0;               ///< to the target
  std::optional<int> quarter = {};  ///< as asked
};

/// A view drawn from the seed, at a place where the pile fills as much of the frame as it can.
View draw_view(const Pile& pile, const PileSurface& surface, const ViewRequest& request,
               unsigned seed);

}  // namespace proofstone::piles
