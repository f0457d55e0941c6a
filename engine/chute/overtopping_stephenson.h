#pragma once

#include "engine/chute/chute_flow.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// How worn the stones are, as Stephenson's coefficient asks.
enum class StephensonRock {
  crushed,  ///< C 0.27
  rounded,  ///< C 0.22
};

/// Rock on a steep face with flow through and over it: Stephenson 1979, used in US guidance for the
/// steep toes of covers. Homogeneous.
struct OvertoppingStephensonInputs : ChuteFlow {
  Slope slope;  ///< tan θ
  StephensonRock rock = StephensonRock::crushed;
  Dimensionless porosity = Dimensionless::number(0.40);
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Angle angle_of_repose = Angle::degrees(42);
  Dimensionless discharge_allowance = Dimensionless::number(1.2);  ///< 1.2 to 1.8 on q
};

struct OvertoppingStephensonResult {
  Dimensionless coefficient;  ///< C
  UnitDischarge sizing_discharge;
  Length d50;
};

/// Problems: the unit discharge is not known; a face as steep as the rock's repose.
Expected<OvertoppingStephensonResult> overtopping_stephenson(
    const OvertoppingStephensonInputs& inputs, Steps& steps);

const SizingMethod& overtopping_stephenson_method();

}  // namespace proofstone
