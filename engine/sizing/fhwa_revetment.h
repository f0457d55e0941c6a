#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"
#include "engine/sizing/usace_bank_and_bed.h"

namespace proofstone {

/// Riprap revetment of FHWA HEC-23 Vol. 2 (2009) Design Guideline 4: the equation of EM 1110-2-1601
/// with K1 by the fitted curve, the design velocity by the two bend fits, and d50 = 1.20·d30.
/// Homogeneous. Slopes below 2 %.
struct FhwaRevetmentInputs {
  WaterAttack attack = WaterAttack::straight_or_inside;
  ChannelForm channel_form = ChannelForm::natural;
  Velocity average_velocity;                  ///< main channel, upstream end of the bend
  std::optional<Velocity> local_velocity;     ///< V_des itself, 20 % up the slope, when it is known
  std::optional<Length> bend_radius;          ///< centreline; needed outside of a bend
  Length top_width;                           ///< water surface of the main channel
  std::optional<Length> distance_below_bend;  ///< where the rock lies below the bend
  Length local_depth;                         ///< above the stone
  Angle bank_angle;                           ///< from horizontal; 0 on a bed
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Angularity angularity = Angularity::angular;
  Dimensionless safety_factor = Dimensionless::number(1.1);
  Dimensionless thickness_coefficient = Dimensionless::number(1.0);
  std::optional<Slope> channel_slope;          ///< only to watch the limit
  std::optional<Dimensionless> froude_number;  ///< only to watch the limit
};

struct FhwaRevetmentResult {
  Velocity design_velocity;
  Dimensionless k1;
  Length d30;
  Length d50;
  Length upstream_extent;    ///< protected length above the bend's limit
  Length downstream_extent;  ///< protected length below it
};

/// Problems: those of usace_bank_and_bed.
Expected<FhwaRevetmentResult> fhwa_revetment(const FhwaRevetmentInputs& inputs, Steps& steps);

const SizingMethod& fhwa_revetment_method();

}  // namespace proofstone
