#pragma once

#include <optional>
#include <vector>

#include "engine/hydraulics/ineffective_part.h"
#include "engine/hydraulics/section_flow.h"

namespace proofstone {

/// One part of a section at one level, in SI, with its rates of change with the level.
struct PartState {
  double area = 0;
  double perimeter = 0;
  double width = 0;  ///< also d(area)/d(level)
  double conveyance = 0;
  double conveyance_growth = 0;  ///< d(conveyance)/d(level) / conveyance
  double first_moment = 0;       ///< ∫ of depth²/2 across the part
};

/// A whole divided section at one level, in SI; all zero when dry.
struct SectionState {
  double level = 0;
  double area = 0;
  double width = 0;
  double conveyance = 0;
  double first_part_conveyance = 0;
  double last_part_conveyance = 0;
  double alpha = 1;  ///< energy coefficient
  double beta = 1;   ///< momentum coefficient
  double first_moment = 0;
  /// α·T/(g·A³) − (dα/dw)/(2g·A²): with the square of the discharge it is 1 at critical flow, less
  /// in tranquil and more in rapid flow.
  double criticality = 0;
};

/// Manning's conveyance in SI, A·(A/P)^⅔/n; all positive.
double manning_conveyance(double area, double perimeter, double n);

/// A divided section, ready to be asked at many levels. Refers to the section, which must outlive
/// it. Internal to the hydraulics.
class DividedSection {
 public:
  /// `ineffective` must be in order and apart; `energy_coefficient` stands in for the α of the
  /// divided conveyance when it is known from measurement.
  DividedSection(const Section& section, const std::vector<Length>& divisions,
                 CompositeRoughness composite, std::vector<IneffectivePart> ineffective = {},
                 std::optional<double> energy_coefficient = {});

  /// The stations that bound the parts, the ends of the section included.
  const std::vector<Length>& bounds() const { return bounds_; }
  const Section& section() const { return section_; }
  /// The part between bounds `index` and `index + 1`; all zero when dry.
  PartState part(std::size_t index, double level) const;
  SectionState state(double level) const;
  SectionFlow flow(Length water_level) const;
  /// m³/s.
  double conveyance(double level) const;
  /// dE/d(level) of E = level + α·Q²/(2g·A²), α changing with the level; `discharge` in m³/s.
  /// Not a number where the section is dry.
  double energy_growth(double level, double discharge) const;

 private:
  const Section& section_;
  std::vector<Length> bounds_;
  CompositeRoughness composite_;
  std::vector<IneffectivePart> ineffective_;
  std::optional<double> energy_coefficient_;
};

}  // namespace proofstone
