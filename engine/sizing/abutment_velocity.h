#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// At which abutment the velocity is asked for.
enum class AbutmentSide { left, right };

/// Characteristic average velocity at a bridge abutment, by the setback ratio of FHWA HEC-23 Vol. 2
/// (2009) DG14: setback of the abutment from the main channel over the average depth of that
/// channel (SBR).
///  1. SBR ≤ 5 at both abutments: discharge over area of the whole contracted opening.
///  2. SBR > 5 at this abutment: discharge over area of its own overbank.
///  3. SBR ≤ 5 here and > 5 at the other: discharge over area from this abutment to the far edge of
///     the main channel, without the far overbank.
/// The guideline leaves SBR 5 itself open; here it counts with the near abutments. Overtopping flow
/// is left out of every discharge.
struct AbutmentVelocityInputs {
  AbutmentSide abutment = AbutmentSide::left;
  Length channel_depth;  ///< average of the main channel
  Discharge channel_discharge;
  Area channel_area;
  Length left_setback;  ///< from the edge of the main channel to the abutment
  Discharge left_discharge;
  Area left_area;
  Length right_setback;
  Discharge right_discharge;
  Area right_area;
};

struct AbutmentVelocityResult {
  Dimensionless left_ratio;
  Dimensionless right_ratio;
  Velocity velocity;
};

/// Problems: an abutment set back over 5 depths whose overbank carries no water.
Expected<AbutmentVelocityResult> abutment_velocity(const AbutmentVelocityInputs& inputs,
                                                   Steps& steps);

const Method& abutment_velocity_method();

}  // namespace proofstone
