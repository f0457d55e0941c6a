#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// How the water meets the rock: decides the velocity that attacks it and the coefficient for the
/// vertical distribution of velocity, Cv.
enum class WaterAttack {
  straight_or_inside,      ///< straight reach, or the inside of a bend: Cv 1.0
  outside_of_bend,         ///< V_SS by the bend curve, Cv by R/W
  below_concrete_channel,  ///< Cv 1.25
  end_of_dike,             ///< Cv 1.25
  impinging,  ///< braided or oblique flow that runs at the bank: 1.6 × average, Cv 1.25
};

/// Which side-slope factor K1 is used.
enum class SideSlopeFactor {
  published_curve,  ///< Plate B-39, by the fit in FHWA HEC-23 DG4
  analytic,         ///< eq. 3-4, √(1 − sin²θ/sin²φ)
};

/// How D50 follows from D30.
enum class MedianFromD30 {
  size_ratio,      ///< D30·(D85/D15)^⅓
  rock_manual,     ///< D30·(D85/D15)^0.32, CIRIA C683
  hec23_constant,  ///< 1.20·D30
};

/// USACE equation for rock on banks and beds in low-turbulence flow (Maynord):
/// EM 1110-2-1601 (1991, Change 1 of 1994) eq. 3-3.
struct UsaceBankAndBedInputs {
  WaterAttack attack = WaterAttack::straight_or_inside;
  ChannelForm channel_form = ChannelForm::natural;
  Velocity average_velocity;               ///< main channel, upstream end of the bend
  std::optional<Velocity> local_velocity;  ///< V itself, when it is known
  std::optional<Length> bend_radius;       ///< centreline
  std::optional<Length> top_width;         ///< water surface of the main channel
  /// From the end of the bend down to the rock, where the rock lies below it.
  std::optional<Length> distance_below_bend;
  Length local_depth;  ///< on a bank, 20 % up the slope from the toe
  Angle bank_angle;    ///< from horizontal; 0 on a bed
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Angularity angularity = Angularity::angular;
  Dimensionless safety_factor = Dimensionless::number(1.1);
  Dimensionless thickness_coefficient = Dimensionless::number(1.0);
  SideSlopeFactor side_slope_factor = SideSlopeFactor::published_curve;
  std::optional<Dimensionless> side_slope_factor_value;  ///< K1 read by hand
  Angle angle_of_repose = Angle::degrees(40);
  MedianFromD30 median_from_d30 = MedianFromD30::size_ratio;
  Dimensionless size_ratio = Dimensionless::number(1.7);  ///< D85/D15
  std::optional<Slope> channel_slope;                     ///< only to watch the limit
  std::optional<Dimensionless> froude_number;             ///< only to watch the limit
};

struct UsaceBankAndBedResult {
  Dimensionless velocity_ratio = Dimensionless::number(1);  ///< V_SS/V_AVG
  Velocity v_ss;                                            ///< the velocity that attacks the rock
  Dimensionless cv;  ///< vertical velocity distribution coefficient
  Dimensionless k1;  ///< side-slope factor
  Length d30;
  Length d50;
};

/// The arithmetic alone, for simulation. Problems: a bend without radius or width, a bank too steep
/// for the chosen side-slope factor.
Expected<UsaceBankAndBedResult> usace_bank_and_bed(const UsaceBankAndBedInputs& inputs);

/// The same with its steps.
Expected<UsaceBankAndBedResult> usace_bank_and_bed(const UsaceBankAndBedInputs& inputs,
                                                   Steps& steps);

const SizingMethod& usace_bank_and_bed_method();

}  // namespace proofstone
