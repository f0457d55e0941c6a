#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// USACE equation for rock on steep slopes, EM 1110-2-1601 (1994) eq. 3-5:
/// D30 = 1.95·S^0.555·q^(2/3)/g^(1/3). Homogeneous. Slopes of 2 to 20 %, angular rock of about
/// 167 lb/ft³ in a layer of 1.5·D100, straight channel, no tailwater. The equation holds neither a
/// safety factor nor a term for the density of the rock.
struct UsaceSteepSlopeInputs {
  UnitDischarge unit_discharge;  ///< discharge over bottom width, before it is concentrated
  Dimensionless flow_concentration = Dimensionless::number(1.25);
  Slope slope;
  Angle bank_angle;  ///< side slopes of the channel, to watch the limit
  Angularity angularity = Angularity::angular;
  std::optional<Dimensionless> specific_gravity;  ///< only to watch the limit
  Dimensionless size_ratio = Dimensionless::number(1.7);
};

struct UsaceSteepSlopeResult {
  UnitDischarge design_unit_discharge;
  Length d30;
  Length d50;
};

Expected<UsaceSteepSlopeResult> usace_steep_slope(const UsaceSteepSlopeInputs& inputs,
                                                  Steps& steps);

const SizingMethod& usace_steep_slope_method();

}  // namespace proofstone
