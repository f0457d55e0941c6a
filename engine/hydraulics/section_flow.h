#pragma once

#include <string>
#include <vector>

#include "engine/finding/steps.h"
#include "engine/hydraulics/section.h"

namespace proofstone {

/// One part of a section between vertical division lines, with its own roughness.
struct FlowPart {
  Length left;
  Length right;
  Area area;
  Length wetted_perimeter;
  Length top_width;
  Dimensionless roughness;     ///< composite of the part
  double conveyance_si = 0;    ///< m³/s
  Velocity velocity;           ///< when a discharge is known
  Discharge discharge;
};

/// Water in a section at one level.
struct SectionFlow {
  Length water_level;
  WetGeometry wet;
  std::vector<FlowPart> parts;
  double conveyance_si = 0;
  Dimensionless energy_coefficient;  ///< α
  Dimensionless froude_number;       ///< with α, on area and top width
  Discharge discharge;
};

/// How roughness inside one part is put together (Chow 1959 eqs. 6-17 to 6-19 [memory]).
enum class CompositeRoughness { horton, pavlovskii, lotter };

/// Conveyance of a section at a level, divided at the stations `divisions` (the bank points; may be
/// empty). Inside a part, differing roughness is composed by `composite`.
SectionFlow flow_at_level(const Section& section, const std::vector<Length>& divisions,
                          Length water_level, CompositeRoughness composite);

/// Uniform flow: the level at which conveyance × √slope carries the discharge. Bracketed root
/// finding; never iterates without end. Problems: slope not positive, discharge not positive, the
/// section cannot hold the discharge ("overtopped": the level would stand above the lower end).
Expected<SectionFlow> normal_flow(const Section& section, const std::vector<Length>& divisions,
                                  Discharge discharge, Slope slope, CompositeRoughness composite,
                                  Steps& steps);

/// Critical flow: levels of least specific energy, lowest energy first. A compound section may have
/// several. Same Problems.
Expected<std::vector<SectionFlow>> critical_flows(const Section& section,
                                                  const std::vector<Length>& divisions,
                                                  Discharge discharge,
                                                  CompositeRoughness composite);

}  // namespace proofstone
