#pragma once

#include "engine/scour/regime_scour.h"

namespace proofstone {

/// General scour by Neill: d = d_i·(q/q_i)^m, from the depth and the discharge for each unit of
/// width of the incised reach when it runs bank-full. USBR (Pemberton and Lara 1984) [memory].
struct NeillScourInputs : RegimeScourInputs {
  Length bankfull_depth;
  UnitDischarge bankfull_unit_discharge;
  UnitDischarge unit_discharge;
  Dimensionless exponent = Dimensionless::number(0.67);  ///< 0.67 for sand, 0.85 for coarse gravel
};

Expected<RegimeScourResult> neill_scour(const NeillScourInputs& inputs, Steps& steps);

const Method& neill_scour_method();

}  // namespace proofstone
