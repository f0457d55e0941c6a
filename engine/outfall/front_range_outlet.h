#pragma once

#include "engine/outfall/conduit_end.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

enum class OutletShape { circular, rectangular };

/// Rock below a storm-drain outlet, Front Range criteria (USDCM Vol. 2, hydraulic structures), US
/// units. The forms are also in FHWA HEC-14 App. D (D.1a and D.1b).
struct FrontRangeOutletInputs : ConduitEnd {
  OutletShape shape = OutletShape::circular;
  Length height;                ///< diameter Dc, or height H of a rectangle
  std::optional<Length> width;  ///< W, of a rectangle
};

struct FrontRangeOutletResult {
  Length height_used;              ///< Da or Ha where the barrel flow is supercritical
  Length tailwater_used;           ///< Yt
  Dimensionless froude_parameter;  ///< Q/Dc^2.5 or Q/(W·H^1.5), ft and ft³/s, with the height used
  Length d50;
};

/// Problems: a rectangle without its width; a normal depth not less than the height.
Expected<FrontRangeOutletResult> front_range_outlet(const FrontRangeOutletInputs& inputs,
                                                    Steps& steps);

const SizingMethod& front_range_outlet_method();

}  // namespace proofstone
