#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Form of the abutment: K of FHWA HEC-23 DG14.
enum class AbutmentForm {
  spill_through,  ///< 0.89 up to Froude number 0.80, 0.61 above
  vertical_wall,  ///< 1.02 and 0.69
};

/// Rock at a bridge abutment: FHWA HEC-23 Vol. 2 (2009) Design Guideline 14. V and y are those of
/// the contracted section by the setback rule (see abutment_velocity.h); Fr = V/√(g·y).
///  - Fr ≤ 0.80: D50/y = [K/(Ss−1)]·V²/(g·y)
///  - Fr > 0.80: D50/y = [K/(Ss−1)]·[V²/(g·y)]^0.14
/// Homogeneous. The two do not meet exactly at 0.80: +0.6 % for spill-through abutments, −0.7 %
/// for vertical walls.
struct AbutmentRiprapInputs {
  AbutmentForm form = AbutmentForm::vertical_wall;
  Velocity velocity;                     ///< characteristic average velocity, contracted section
  Length depth;                          ///< contracted section
  std::optional<Length> overbank_depth;  ///< beside the embankment, for the apron
  Dimensionless specific_gravity = Dimensionless::number(2.65);
};

struct AbutmentRiprapResult {
  Dimensionless froude_number;
  Length d50;
  Length apron_width;     ///< from the toe into the waterway
  Length slope_coverage;  ///< along the embankment, downstream of the tangent point
  Length height_above_water;
};

Expected<AbutmentRiprapResult> abutment_riprap(const AbutmentRiprapInputs& inputs, Steps& steps);

const SizingMethod& abutment_riprap_method();

}  // namespace proofstone
