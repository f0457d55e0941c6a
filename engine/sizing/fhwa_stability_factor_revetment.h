#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// What the rock protects, which decides whether the extra factor of piers and abutments is taken.
enum class RevetmentUse { bank, pier_or_abutment };

/// Riprap revetment of FHWA HEC-11 (IP-89-016, 1989) eqs. 6 to 9, by a stability factor:
/// D50 = 0.001·V³/(d^0.5·K1^1.5) in feet, with average depth and velocity of the main channel, for
/// specific gravity 2.65 and stability factor 1.2, corrected by Csg and Csf. Not homogeneous.
struct FhwaStabilityFactorRevetmentInputs {
  Velocity average_velocity;  ///< main channel
  Length average_depth;       ///< main channel
  Angle bank_angle;           ///< from horizontal; 0 on a bed
  Angle angle_of_repose = Angle::degrees(40);
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Dimensionless stability_factor = Dimensionless::number(1.2);
  RevetmentUse use = RevetmentUse::bank;
};

struct FhwaStabilityFactorRevetmentResult {
  Dimensionless k1;   ///< bank angle correction
  Dimensionless csg;  ///< specific gravity correction, 2.12/(Ss−1)^1.5
  Dimensionless csf;  ///< stability factor correction, (SF/1.2)^1.5
  Length d50;
};

/// Problems: a bank as steep as the angle of repose or steeper.
Expected<FhwaStabilityFactorRevetmentResult> fhwa_stability_factor_revetment(
    const FhwaStabilityFactorRevetmentInputs& inputs, Steps& steps);

/// The upper end of the range that HEC-11 Table 1 gives for a bend of this radius over width; 1.2
/// on a straight reach (`r_over_w` absent) and where R/W > 30.
Dimensionless hec11_stability_factor(std::optional<double> r_over_w);

const SizingMethod& fhwa_stability_factor_revetment_method();

}  // namespace proofstone
