#pragma once

#include <vector>

#include "engine/hydraulics/crossing_level.h"
#include "engine/hydraulics/divided_section.h"

namespace proofstone {

/// Uniform flows of one section, whatever the discharge: its conveyance is looked at from level to
/// level once. Refers to the section, which must outlive it. Internal to the hydraulics and to the
/// water of a site.
class UniformFlows {
 public:
  UniformFlows(const Section& section, std::vector<Length> divisions, CompositeRoughness composite);

  /// As `normal_flow`, with the same Problems.
  Expected<SectionFlow> at(Discharge discharge, Slope slope, Steps& steps);

 private:
  /// Levels at which the conveyance comes to be what is wanted, rising.
  std::vector<double> levels_that_carry(double wanted);

  const Section& section_;
  std::vector<Length> divisions_;
  DividedSection divided_;
  std::vector<ValueAtLevel> conveyances_;  ///< empty until they are asked for
};

}  // namespace proofstone
