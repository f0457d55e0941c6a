#pragma once

#include <optional>

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

enum class PierShape { square, round, circular_cylinder, group_of_cylinders, sharp };

enum class PierBed { clear_water, plane_bed, small_dunes, medium_dunes, large_dunes };

/// Local scour at a pier: the CSU equation of FHWA HEC-18 (2012) eq. 7.1 [memory],
///   ys/y1 = 2.0·K1·K2·K3·(a/y1)^0.65·Fr1^0.43,
/// with K2 by its formula, L/a at most 12, K1 1.0 beyond 5° of attack, and the factor for wide
/// piers in shallow flow where the bed's grain is given. The rule of thumb for round noses in line
/// with the flow, 2.4 widths (Fr ≤ 0.8) or 3.0, is shown beside it and never lowers it: the
/// manual's own example exceeds it.
struct PierScourInputs {
  Length depth;        ///< y1, directly upstream
  Velocity velocity;   ///< V1, directly upstream
  Length pier_width;   ///< a
  Length pier_length;  ///< L
  PierShape nose = PierShape::square;
  Angle attack_angle;
  PierBed bed = PierBed::plane_bed;
  std::optional<Length> bed_grain;  ///< D50; for wide piers
};

struct PierScourResult {
  Dimensionless k1;
  Dimensionless k2;
  Dimensionless k3;
  Dimensionless wide_pier_factor;  ///< 1 where it does not apply
  Dimensionless froude_number;
  Length scour;
};

Expected<PierScourResult> pier_scour(const PierScourInputs& inputs, Steps& steps);

const Method& pier_scour_method();

}  // namespace proofstone
