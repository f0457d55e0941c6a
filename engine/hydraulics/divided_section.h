#pragma once

#include <vector>

#include "engine/hydraulics/section_flow.h"

namespace proofstone {

/// One part of a section at one level, in SI, with its rates of change with the level.
struct PartState {
  double area = 0;
  double perimeter = 0;
  double width = 0;  ///< also d(area)/d(level)
  double conveyance = 0;
  double conveyance_growth = 0;  ///< d(conveyance)/d(level) / conveyance
};

/// Manning's conveyance in SI, A·(A/P)^⅔/n; all positive.
double manning_conveyance(double area, double perimeter, double n);

/// A divided section, ready to be asked at many levels. Refers to the section, which must outlive
/// it. Internal to the hydraulics.
class DividedSection {
 public:
  DividedSection(const Section& section, const std::vector<Length>& divisions,
                 CompositeRoughness composite);

  /// The stations that bound the parts, the ends of the section included.
  const std::vector<Length>& bounds() const { return bounds_; }
  /// The part between bounds `index` and `index + 1`; all zero when dry.
  PartState part(std::size_t index, double level) const;
  /// m³/s.
  double conveyance(double level) const;
  /// dE/d(level) of E = level + α·Q²/(2g·A²), α changing with the level; `discharge` in m³/s.
  /// Not a number where the section is dry.
  double energy_growth(double level, double discharge) const;

 private:
  const Section& section_;
  std::vector<Length> bounds_;
  CompositeRoughness composite_;
};

}  // namespace proofstone
