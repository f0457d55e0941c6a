#pragma once

#include <vector>

#include "engine/finding/problem.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// One surveyed point. `roughness` is Manning's n from this point to the next.
struct SectionPoint {
  Length station;
  Length elevation;
  Dimensionless roughness;
};

/// Geometry of the wet part of a section at one water level.
struct WetGeometry {
  Area area;
  Length wetted_perimeter;  ///< ground only, never the water between parts
  Length top_width;         ///< without dry islands
  double first_moment_si = 0;  ///< ∫ of depth²/2 across the section, m³; for specific force
  Length deepest;           ///< greatest depth
  bool end_wall_added = false;  ///< the water stands above an end point, a wall was added there
};

/// A surveyed cross-section, looking downstream, left to right.
///
/// Invariant: at least three points; stations never fall, and a vertical wall (two points of one
/// station) has different elevations; roughness from 0.005 to 0.5.
class Section {
 public:
  /// Problems name the point ("point 4, station"). Stations that run right to left are a Problem,
  /// not turned round: the banks would swap silently.
  static Expected<Section> make(std::vector<SectionPoint> points);

  const std::vector<SectionPoint>& points() const { return points_; }
  Length lowest() const;
  Length highest() const;
  Length ground_at(Length station) const;  ///< interpolated; end elevation beyond the ends

  WetGeometry wet(Length water_level) const;
  /// The wet geometry of the ground between two stations (vertical division lines carry no
  /// perimeter).
  WetGeometry wet_between(Length left, Length right, Length water_level) const;

 private:
  explicit Section(std::vector<SectionPoint> points) : points_(std::move(points)) {}
  std::vector<SectionPoint> points_;
};

}  // namespace proofstone
