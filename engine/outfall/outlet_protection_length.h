#pragma once

#include "engine/outfall/front_range_outlet.h"

namespace proofstone {

/// How far rock must reach below a storm-drain outlet until the flow has spread to a velocity the
/// channel bears: Front Range criteria (USDCM Vol. 2). The expansion factor is read from the
/// manual's chart; no equation of it is published.
struct OutletProtectionLengthInputs {
  OutletShape shape = OutletShape::circular;
  Discharge discharge;
  Length height;                   ///< diameter Dc, or height H of a rectangle
  Length width;                    ///< W of the conduit; the diameter of a pipe
  Length tailwater;                ///< Yt
  Velocity allowable_velocity;     ///< V the channel below bears
  Dimensionless expansion_factor;  ///< 1/(2·tan θ)
};

struct OutletProtectionLengthResult {
  Area required_area;              ///< At = Q/V
  Dimensionless froude_parameter;  ///< Q/Dc^2.5 or Q/(W·H^1.5), ft and ft³/s
  Length computed_length;          ///< by the equation; below 0 where the flow is wide enough
  Length shortest;                 ///< 3·D
  Length longest;                  ///< 10·D, more above the parameter's range
  Length length;                   ///< Lp
  Length end_width;                ///< T
};

Expected<OutletProtectionLengthResult> outlet_protection_length(
    const OutletProtectionLengthInputs& inputs, Steps& steps);

const Method& outlet_protection_length_method();

}  // namespace proofstone
