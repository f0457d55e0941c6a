#pragma once

#include "engine/chute/chute_flow.h"
#include "engine/rock/rock_properties.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Rock on an overtopped embankment: Abt and Johnson 1991 (J. Hydraul. Eng. 117(8)), with the tests
/// of NUREG/CR-4651. US units: D50 in inches, q in ft²/s.
struct OvertoppingAbtJohnsonInputs : ChuteFlow {
  Slope slope;
  /// Discharge of failure over discharge of first movement: 1.35 designs for no movement.
  Dimensionless movement_factor = Dimensionless::number(1.35);
  /// How far flow gathers: 1 for sheet flow, up to 3.
  Dimensionless concentration = Dimensionless::number(1);
  Angularity angularity = Angularity::angular;
};

struct OvertoppingAbtJohnsonResult {
  UnitDischarge sizing_discharge;  ///< q with concentration and movement factor
  Length d50_at_failure;           ///< angular rock that fails at the gathered q itself
  Length d50_angular;
  Length d50;
};

/// D50 = 5.23·S^0.43·q^0.56 (in, ft²/s): angular rock that fails at q.
Length abt_johnson_size(UnitDischarge q, Slope slope);

/// Problems: the unit discharge is not known.
Expected<OvertoppingAbtJohnsonResult> overtopping_abt_johnson(
    const OvertoppingAbtJohnsonInputs& inputs, Steps& steps);

const SizingMethod& overtopping_abt_johnson_method();

}  // namespace proofstone
