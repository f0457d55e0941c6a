#pragma once

#include <vector>

#include "engine/finding/source.h"
#include "engine/hydraulics/section.h"

namespace proofstone {

/// What drives and slows the water across a section.
struct LateralWater {
  Length water_level;
  Slope energy_slope;
  /// λ, the eddy viscosity as a share of depth × shear velocity: about 0.07 in wide channels.
  double eddy_viscosity = 0.07;
  /// Darcy friction factor f of each piece of ground, from a point to the next (one less than there
  /// are points, or as many). Empty: from the section's roughness, f = 8·g·n²/H^⅓.
  std::vector<double> friction_factors;
  /// Γ of each piece of ground as a share of ρ·g·H·S with H the greatest depth. Empty: none.
  std::vector<double> secondary_flow;
  double gravity_si = standard_gravity.meters_per_second_squared();
  double density_si = 1000;  ///< kg/m³
  int cells = 1000;          ///< about how many cells the wet width is cut into
};

/// One cell of the solution, from left to right.
struct LateralCell {
  Length station;  ///< of its middle
  Length width;
  Length depth;
  Velocity velocity;  ///< depth-averaged
  Stress shear;       ///< on the ground along its own slope, ρ·(f/8)·U²
  double friction_factor = 0;
  bool joined = false;  ///< water meets the water of the cell before it
};

struct LateralDistribution {
  std::vector<LateralCell> cells;
  Discharge discharge;
  double boundary_force_si = 0;  ///< of ground and walls on the water, N for each metre of length
  double weight_force_si = 0;    ///< ρ·g·A·S, N/m; the two agree where there is no secondary flow

  /// Velocity at a station, straight between the middles of joined cells; nothing on dry ground.
  std::optional<LateralCell> at(Length station) const;
};

/// Depth-averaged velocity across a section in uniform flow, with exchange between neighbouring
/// water and secondary flow (Shiono & Knight 1991):
///   ρ·g·H·S − ρ·(f/8)·U²·√(1+1/s²) + d/dy[ρ·λ·H²·√(f/8)·U·dU/dy] = Γ
/// which is linear in U². Solved by finite volumes between the points of the section, the momentum
/// of every cell balanced. Water stands still at a vertical wall; at a water line it is free.
///
/// Problems: no water, λ or slope not positive, a list of the wrong length or with an impossible
/// value, a secondary flow so strong that the water would run backwards somewhere.
Expected<LateralDistribution> lateral_distribution(const Section& section,
                                                   const LateralWater& water);

const Source& lateral_distribution_source();

}  // namespace proofstone
