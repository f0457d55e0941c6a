#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// What the bend radius is divided by before the bend-shear curve is read.
enum class BendBasis {
  top_width,     ///< Rc/T, FHWA HEC-15 3rd ed.
  bottom_width,  ///< Rc/B, as FHWA HEC-22 enters the same curve; gives less shear
};

/// FHWA shear-based rock lining: HEC-15 (FHWA-NHI-05-114, 3rd ed. 2005) chs. 3 and 6, US units.
struct FhwaShearLiningInputs {
  Length depth;                        ///< greatest depth of the water beside the rock
  Slope slope;                         ///< of the channel or of the energy line
  Angle bank_angle;                    ///< side slope from horizontal; 0 on a bed
  std::optional<Length> bend_radius;   ///< centreline; absent on a straight reach
  std::optional<Length> top_width;     ///< water surface, for Rc/T
  std::optional<Length> bottom_width;  ///< for Rc/B
  BendBasis bend_basis = BendBasis::top_width;
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Angle angle_of_repose = Angle::degrees(40);
  /// A size to try: `required_at_trial` then says what HEC-15 asks for at that size.
  std::optional<Length> trial_size;
};

struct FhwaShearLiningResult {
  Stress shear_bottom;           ///< Kb·γ·d·S
  Stress shear_side;             ///< K1·Kb·γ·d·S
  Stress shear_permissible;      ///< F*·(γs−γ)·D50 at the size tried
  Dimensionless bend_factor;     ///< Kb
  Dimensionless side_shear;      ///< K1
  Dimensionless side_stability;  ///< K2
  /// At `trial_size` when given, else at the size found for this place:
  Dimensionless particle_reynolds;
  Dimensionless shields;        ///< F*
  Dimensionless safety_factor;  ///< SF
  Dimensionless steep_factor;   ///< Δ of the steep form; 1 where only the mild form is used
  Length required_at_trial;
  Length d50_bottom;
  Length d50_side;
  Length d50;  ///< the size for this place: the side's on a bank, else the bottom's
  /// A larger size that is again too small for what is asked at it, where there is one.
  std::optional<Length> fails_again_at;
};

/// The smallest D50 that is at least as large as what the procedure asks for at that D50. The size
/// is found by trying upward from small rock, because a larger trial changes F* and SF and with
/// them the requirement. Slope up to 5 %: mild form; from 10 %: steep, moment-balance form;
/// between: the larger of both.
///
/// Problems: a bend without the width its basis asks for, a bank as steep as the rock's repose, no
/// size up to 30 ft that holds.
Expected<FhwaShearLiningResult> fhwa_shear_lining(const FhwaShearLiningInputs& inputs,
                                                  Steps& steps);
/// The sizes without steps, for simulation; `fails_again_at` is not looked for.
Expected<FhwaShearLiningResult> fhwa_shear_lining(const FhwaShearLiningInputs& inputs);

const SizingMethod& fhwa_shear_lining_method();

}  // namespace proofstone
