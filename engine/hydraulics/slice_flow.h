#pragma once

#include <vector>

#include "engine/finding/source.h"
#include "engine/hydraulics/section.h"

namespace proofstone {

/// The water over one narrow slice of a section, between two vertical lines.
struct FlowSlice {
  Length left;
  Length right;
  Area area;
  Length wetted_perimeter;
  Length top_width;
  Length mean_depth;  ///< a/T
  Length deepest;
  double conveyance_si = 0;  ///< m³/s
  Discharge discharge;
  Velocity velocity;             ///< depth-averaged, q/d
  UnitDischarge unit_discharge;  ///< for each unit of top width
  Stress shear;                  ///< on the ground of the slice, γ·(a/p)·S
  Dimensionless froude_number;   ///< V/√(g·d)
};

/// What is shared across a section slice by slice.
struct SliceWater {
  Length water_level;
  Discharge discharge;  ///< of all slices together
  Slope energy_slope;
};

/// How fine the slices are.
struct SliceExtent {
  Length left;   ///< vertical line where the first slice begins
  Length right;  ///< and where the last one ends
  /// Ground between two survey points is cut further into equal slices no wider than this; 0 leaves
  /// one slice a piece of ground.
  Length greatest_width;
};

/// Shares a discharge between narrow slices of a section by their conveyance,
/// Kᵢ = aᵢ^(5/3)·pᵢ^(−2/3)/nᵢ, Vᵢ = (Q/ΣKᵢ)·Kᵢ/aᵢ: the slice velocities carry the whole discharge,
/// no more and no less. Vertical lines between slices carry no friction and no mixing, so the
/// deepest slice comes out too fast and the banks too slow; for straight reaches only (common
/// practice; the WES Streambank Handbook App. A restricts the slice beside the bank to them).
///
/// Dry ground gives no slice. Problems: extent not inside the section or not left to right, a
/// discharge or slope that is not positive, no water between the lines ("dry"), more than 20,000
/// slices.
Expected<std::vector<FlowSlice>> slice_flow(const Section& section, const SliceExtent& extent,
                                            const SliceWater& water);

/// The slice that holds a station; of two that share it the faster one; nothing on dry ground.
const FlowSlice* slice_at(const std::vector<FlowSlice>& slices, Length station);

const Source& slice_flow_source();

}  // namespace proofstone
