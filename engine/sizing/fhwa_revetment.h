#pragma once

#include <optional>

#include "engine/sizing/bank_and_bed_flow.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Riprap revetment of FHWA HEC-23 Vol. 2 (2009) Design Guideline 4: the equation of EM 1110-2-1601
/// with K1 by the fitted curve, the design velocity by the two bend fits, and d50 = 1.20·d30.
/// Homogeneous. Slopes below 2 %.
using FhwaRevetmentInputs = BankAndBedFlow;

struct FhwaRevetmentResult {
  Velocity design_velocity;
  Dimensionless k1;
  Length d30;
  Length d50;
  Length upstream_extent;    ///< protected length above the bend's limit
  Length downstream_extent;  ///< protected length below it
};

/// Problems: those of usace_bank_and_bed; no width of the water, of which the lengths are
/// multiples.
Expected<FhwaRevetmentResult> fhwa_revetment(const FhwaRevetmentInputs& inputs, Steps& steps);
/// The same arithmetic without its steps, for simulation.
Expected<FhwaRevetmentResult> fhwa_revetment(const FhwaRevetmentInputs& inputs);

const SizingMethod& fhwa_revetment_method();

}  // namespace proofstone
