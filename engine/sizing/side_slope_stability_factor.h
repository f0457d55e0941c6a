#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Which derivation of the stability factor is used.
enum class StabilityForm {
  stevens_simons,  ///< FHWA HDS-6: stability number 21·τ/[(Ss−1)γD], level in the direction of flow
  julien,          ///< with the downstream slope of the bed; critical shear 0.047·(γs−γ)·D
};

/// Stability factor of a stone on a side slope (Stevens, Simons and Lewis 1976; FHWA HDS-6, 2001,
/// eqs. 6.3 to 6.16): the moments that hold it over those that roll it out. 1 is the beginning of
/// motion. Homogeneous.
///
/// The attack is the shear on the stone, a velocity one D50 above the bed, or the mean velocity
/// with the depth, from which that velocity follows as 3.4·V/ln(12.3·y/D). A velocity goes before a
/// shear: it is nearer to the stone. The flow angle is measured in the slope from horizontal,
/// positive where the water heads *down* the slope.
struct SideSlopeStabilityFactorInputs {
  StabilityForm form = StabilityForm::stevens_simons;
  std::optional<Stress> shear;                 ///< τ0 on the slope
  std::optional<Velocity> reference_velocity;  ///< Vr, one D50 above the bed
  std::optional<Velocity> mean_velocity;       ///< V, depth-averaged
  std::optional<Length> depth;                 ///< y, needed with the mean velocity
  Angle bank_angle;                            ///< θ, from horizontal; 0 on a bed
  Angle flow_angle;                            ///< λ, positive down the slope
  Angle bed_angle;                             ///< θ0, downstream slope, in Julien's form
  Angle angle_of_repose = Angle::degrees(40);
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Dimensionless stability_factor = Dimensionless::number(1.5);  ///< to be reached
  std::optional<Length> trial_size;                             ///< its own factor is computed too
};

struct SideSlopeStabilityFactorResult {
  Dimensionless stability_number;       ///< η of the trial size, else that of the size required
  Angle drag_angle;                     ///< β of that size, from the line of steepest fall
  Dimensionless side_stability_number;  ///< η' of that size
  Dimensionless stability_factor;       ///< SF of that size
  Dimensionless required_number;        ///< η at which the factor asked for is just reached
  Length d50;                           ///< the size required
};

/// Stability numbers and angles of one case, as plain numbers and radians.
struct StabilityCase {
  double eta = 0;      ///< η, stability number on a level bed
  double theta = 0;    ///< bank
  double theta_0 = 0;  ///< bed, downstream
  double lambda = 0;   ///< flow, positive down the slope
  double phi = 0;      ///< repose
};
struct StabilityMoments {
  double beta = 0;
  double eta_side = 0;
  double factor = 0;
};
/// The factor of one case. With theta_0 zero it is that of Stevens and Simons.
StabilityMoments stability_moments(const StabilityCase& given);

/// Problems: no attack, or both velocities; a mean velocity without depth; a factor that no size
/// reaches because the bank itself is too steep for it, or no stone smaller than the depth.
Expected<SideSlopeStabilityFactorResult> side_slope_stability_factor(
    const SideSlopeStabilityFactorInputs& inputs, Steps& steps);

const SizingMethod& side_slope_stability_factor_method();

}  // namespace proofstone
