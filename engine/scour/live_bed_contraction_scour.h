#pragma once

#include <optional>

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Scour of a contracted section by a flow that brings bed material along (live bed): Laursen, as
/// FHWA HEC-18 (2012) eq. 6.2 prints it [memory]: y2/y1 = (Q2/Q1)^(6/7)·(W1/W2)^k1.
struct LiveBedContractionInputs {
  Length approach_depth;           ///< y1, upstream main channel
  Discharge approach_discharge;    ///< Q1, in the upstream channel that moves bed material
  Discharge contracted_discharge;  ///< Q2, in the contracted channel
  Length approach_width;           ///< W1, bottom width
  Length contracted_width;         ///< W2, bottom width less piers
  Length existing_depth;           ///< y0 in the contraction before scour
  Length bed_grain;                ///< D50, for whether the bed moves at all
  Velocity fall_velocity;          ///< of the D50
  Slope energy_slope;              ///< upstream
  std::optional<Velocity> approach_velocity;
};

struct LiveBedContractionResult {
  Dimensionless shear_ratio;  ///< shear velocity over fall velocity
  Dimensionless exponent;     ///< k1: 0.59, 0.64 or 0.69
  Velocity critical_velocity;
  Length depth;  ///< y2
  Length scour;
};

Expected<LiveBedContractionResult> live_bed_contraction_scour(
    const LiveBedContractionInputs& inputs, Steps& steps);

const Method& live_bed_contraction_scour_method();

}  // namespace proofstone
