#pragma once

#include <string_view>
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
  Dimensionless roughness;   ///< composite of the part; 0 when the part is dry
  double conveyance_si = 0;  ///< m³/s
  Velocity velocity;         ///< when a discharge is known
  Discharge discharge;
};

/// Water in a section at one level.
struct SectionFlow {
  Length water_level;
  WetGeometry wet;
  std::vector<FlowPart> parts;
  double conveyance_si = 0;
  Dimensionless energy_coefficient = Dimensionless::number(1);  ///< α
  Dimensionless froude_number;  ///< V/√(g·(A/T)/α); 0 while no discharge is known
  Discharge discharge;
  /// Normal flow only: higher levels at which the same discharge would also run uniformly, because
  /// conveyance falls for a while as water spreads over a berm. Rising branches only.
  std::vector<Length> further_levels;

  Velocity mean_velocity() const;   ///< Q/A; 0 when dry
  Length hydraulic_radius() const;  ///< A/P; 0 when dry
  Length specific_energy() const;   ///< greatest depth + α·V²/2g
};

/// How roughness inside one part is put together (Chow 1959 eqs. 6-17 to 6-19 [memory]).
///  - horton: equal velocity everywhere, n = (Σ P·n^1.5 / P)^⅔
///  - pavlovskii: resisting forces add, n = (Σ P·n² / P)^½
///  - lotter: discharges add, n = P·R^(5/3) / Σ(Pᵢ·Rᵢ^(5/3)/nᵢ); a vertical wall counts with the
///    ground it stands on
/// Horton and Pavlovskii are for one channel with different linings; over a flood plain they halve
/// the flow: divide the section there.
enum class CompositeRoughness { horton, pavlovskii, lotter };

std::string_view composite_roughness_name(CompositeRoughness composite);

/// Manning's equation in SI: K = A·R^⅔/n, Q = K·√S (k = 1; in feet k = (1/0.3048)^⅓ = 1.4859,
/// which older pages round to 1.486 or 1.49).
///
/// Conveyance of a section at a level, divided at the stations `divisions` (the bank points; may be
/// empty; those outside the section are passed over). Inside a part, differing roughness is
/// composed by `composite`. A level at or below the ground gives a dry flow: all zero.
SectionFlow flow_at_level(const Section& section, const std::vector<Length>& divisions,
                          Length water_level, CompositeRoughness composite);

/// The same water with a discharge, shared between the parts as their conveyance.
SectionFlow carrying(SectionFlow flow, Discharge discharge);

/// Uniform flow: the lowest level at which conveyance × √slope carries the discharge, and the
/// further ones. Bracketed root finding; never iterates without end. Problems: slope not positive,
/// discharge not positive, divisions not in order, the section cannot hold the discharge
/// ("overtopped": the level would stand above the lower end).
Expected<SectionFlow> normal_flow(const Section& section, const std::vector<Length>& divisions,
                                  Discharge discharge, Slope slope, CompositeRoughness composite,
                                  Steps& steps);

/// Critical flow: levels of least specific energy, lowest energy first, with α changing with the
/// level. A compound section may have several. Same Problems.
Expected<std::vector<SectionFlow>> critical_flows(const Section& section,
                                                  const std::vector<Length>& divisions,
                                                  Discharge discharge,
                                                  CompositeRoughness composite);

/// Writes the working of a flow: geometry, roughness and conveyance part by part, velocity, Froude
/// number.
void explain_flow(const SectionFlow& flow, Steps& steps);

}  // namespace proofstone
