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
  Length wetted_perimeter;      ///< ground only, never the water between parts
  Length top_width;             ///< without dry islands
  double first_moment_si = 0;   ///< ∫ of depth²/2 across the section, m³; for specific force
  double perimeter_growth = 0;  ///< d(wetted perimeter)/d(water level), m/m; for critical depth
  Length deepest;               ///< greatest depth
  bool end_wall_added = false;  ///< the water stands above an end point, a wall was added there
  /// Stretches of water apart from one another. Above 1, low ground behind higher ground is taken
  /// to carry water; whether it is connected must be looked at.
  int wet_stretches = 0;
};

/// A surveyed cross-section, looking downstream, left to right.
///
/// Invariant: 3 to 10,000 points; stations never fall, at most two points share one (a vertical
/// wall) and then differ in elevation; all values finite; the section is at most 100 km wide and
/// 10 km high; roughness from 0.005 to 0.5.
class Section {
 public:
  /// Problems name the point ("point 4, station"). Stations that run right to left are a Problem,
  /// not turned round: the banks would swap silently.
  static Expected<Section> make(std::vector<SectionPoint> points);

  const std::vector<SectionPoint>& points() const { return points_; }
  Length left_end() const { return points_.front().station; }
  Length right_end() const { return points_.back().station; }
  Length lowest() const;
  Length highest() const;
  /// Elevation of the lower end point: water above it leaves the section.
  Length lower_end() const;
  /// Interpolated; the foot of a vertical wall at its station; the end elevation beyond the ends.
  Length ground_at(Length station) const;

  WetGeometry wet(Length water_level) const;
  /// The wet geometry of the ground between two stations (vertical division lines carry no
  /// perimeter). A vertical wall at a division line belongs to the side on which the ground is
  /// lower, since that is where water touches it.
  WetGeometry wet_between(Length left, Length right, Length water_level) const;

 private:
  explicit Section(std::vector<SectionPoint> points) : points_(std::move(points)) {}
  std::vector<SectionPoint> points_;
};

}  // namespace proofstone
