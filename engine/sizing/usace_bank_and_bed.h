#pragma once

#include <optional>

#include "engine/sizing/bank_and_bed_flow.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

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
struct UsaceBankAndBedInputs : BankAndBedFlow {
  SideSlopeFactor side_slope_factor = SideSlopeFactor::published_curve;
  std::optional<Dimensionless> side_slope_factor_value;  ///< K1 read by hand
  Angle angle_of_repose = Angle::degrees(40);
  MedianFromD30 median_from_d30 = MedianFromD30::size_ratio;
  Dimensionless size_ratio = Dimensionless::number(1.7);  ///< D85/D15
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
