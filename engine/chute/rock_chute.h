#pragma once

#include "engine/chute/chute_flow.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Rock chute: loose angular rock on a slope of 2 to 40 % (Robinson, Rice and Kadavy 1998, Trans.
/// ASAE 41(3):621–626). The equation gives the highest stable size, so a safety factor multiplies
/// it. US units: q in ft²/s, D50 in inches.
struct RockChuteInputs : ChuteFlow {
  Slope slope;
  Dimensionless safety_factor = Dimensionless::number(1.2);
};

struct RockChuteResult {
  UnitDischarge unit_discharge;
  Length d50_at_failure;  ///< what just holds
  Length d50;             ///< with the safety factor
  Dimensionless roughness;
  Length depth;  ///< of uniform flow over that rock
  Velocity velocity;
  Length layer_thickness;
  Length apron_length;
};

/// Problems: the unit discharge is not known.
Expected<RockChuteResult> rock_chute(const RockChuteInputs& inputs, Steps& steps);
/// The same arithmetic without its steps, for simulation.
Expected<RockChuteResult> rock_chute(const RockChuteInputs& inputs);

const SizingMethod& rock_chute_method();

}  // namespace proofstone
