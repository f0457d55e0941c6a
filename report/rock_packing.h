#pragma once

#include <optional>
#include <vector>

#include "engine/site/pictures.h"
#include "report/stone_shape.h"

namespace proofstone {

/// A place in a section, in metres: station to the right, elevation upward.
struct SectionPlace {
  double x = 0;
  double z = 0;
};

/// A part of a section, in metres.
struct SectionWindow {
  double left = 0;
  double right = 0;
  double bottom = 0;
  double top = 0;

  bool holds(SectionPlace place, double margin) const {
    return place.x >= left - margin && place.x <= right + margin && place.z >= bottom - margin &&
           place.z <= top + margin;
  }
};

/// The strip that a rock layer fills: along its finished surface and down into the ground, square
/// to it.
class LayerStrip {
 public:
  /// Nothing when the surface has no length, or the thickness is not positive.
  static std::optional<LayerStrip> make(const SectionPicture::RockLayer& layer);

  double length() const { return distance_.back(); }
  double thickness() const { return thickness_; }
  /// The place `along` the surface from its left end and `down` from it, both in metres.
  SectionPlace at(double along, double down) const;
  std::vector<SectionPlace> surface() const { return surface_; }
  /// Surface and underside as one closed line.
  std::vector<SectionPlace> outline() const;
  /// The stretch of the surface from the first place inside a window to the last.
  std::optional<std::pair<double, double>> stretch_in(const SectionWindow& window) const;

 private:
  std::vector<SectionPlace> surface_;
  std::vector<SectionPlace> down_;  ///< at each point, the step to the underside for thickness 1
  std::vector<double> distance_;    ///< along the surface
  double thickness_ = 0;
};

/// Outlines of stones that fill a stretch of a strip, touching as packed stones do: rows of stones
/// of 0.6 to 1.4 medians, each grown until it meets its neighbours. At most `most` stones; the same
/// numbers give the same stones.
std::vector<std::vector<SectionPlace>> packed_stones(const LayerStrip& strip, double from,
                                                     double to, double median, std::size_t most,
                                                     SteadyNumbers& numbers);

/// About how many stones packed_stones will make.
double expected_stones(const LayerStrip& strip, double from, double to, double median);

}  // namespace proofstone
