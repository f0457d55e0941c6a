#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

enum class ConduitShape { circular, box };

/// Rock basin below a culvert, shaped beforehand like the hole the jet would scour: FHWA HEC-14 3rd
/// ed. (2006) §10.1. Homogeneous.
struct OutfallBasinInputs {
  ConduitShape shape = ConduitShape::circular;
  Discharge discharge;
  Length width;                     ///< Wo: diameter of a pipe, width of a box
  Length brink_depth;               ///< yo, of the flow where it leaves the conduit
  std::optional<Area> flow_area;    ///< at the brink, when it is known; else from the shape
  std::optional<Length> tailwater;  ///< above the outlet invert; absent: none, the deepest hole
  Length d50;                       ///< of the rock in the basin, to be tried
};

struct OutfallBasinResult {
  Area flow_area;
  Velocity outlet_velocity;
  Length equivalent_depth;  ///< ye: the brink depth of a box, else (A/2)^½
  Dimensionless froude_number;
  Dimensionless size_over_depth;       ///< D50/ye
  Dimensionless tailwater_over_depth;  ///< TW/ye
  Dimensionless tailwater_term;        ///< Co
  Length scour_depth;                  ///< hs
  Dimensionless scour_over_size;       ///< hs/D50
  Length pool_length;                  ///< Ls
  Length basin_length;                 ///< LB
  Length basin_width;                  ///< WB, at its end
  Length critical_depth;               ///< at the exit
  Velocity exit_velocity;
  Length entry_thickness;
  Length floor_thickness;
  Length d50;  ///< the rock tried, which the basin serves with
};

/// Area of flow of depth `depth` in a pipe of that diameter. Precondition: 0 < depth ≤ diameter.
Area pipe_flow_area(Length diameter, Length depth);

/// Problems: a pipe whose brink depth exceeds its diameter; no scour hole (hs not above 0) or one
/// too shallow for a basin (hs/D50 below 2), for which the method gives no basin.
Expected<OutfallBasinResult> outfall_basin(const OutfallBasinInputs& inputs, Steps& steps);

const SizingMethod& outfall_basin_method();

}  // namespace proofstone
