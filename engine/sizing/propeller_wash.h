#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Whether the propeller turns free or in a duct.
enum class PropellerKind { free, ducted };

/// Rock under a propeller's jet (Fuehrer; PIANC) [memory, with doubt], metric:
///   U0 = c·(P/(ρ·Dp²))^⅓, c 1.48 free and 1.17 ducted; Vb = 0.22 to 0.30·U0·Dp/hp;
///   D = Vb²/(2g·Δ·0.86²), Isbash for high turbulence, at the upper Vb.
struct PropellerWashInputs {
  Dimensionless power_kilowatts;  ///< engine power used, in kW
  Length propeller_diameter;
  Length height_above_bed;  ///< of the propeller's axis
  PropellerKind kind = PropellerKind::free;
  Dimensionless specific_gravity = Dimensionless::number(2.65);
};

struct PropellerWashResult {
  Velocity jet_velocity;
  Velocity bed_velocity_low;
  Velocity bed_velocity_high;
  Length d50;
};

/// Problem "propeller-in-the-bed": the axis less than half a diameter above the bed.
Expected<PropellerWashResult> propeller_wash(const PropellerWashInputs& inputs, Steps& steps);

const Method& propeller_wash_method();

}  // namespace proofstone
