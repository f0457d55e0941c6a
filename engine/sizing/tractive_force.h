#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Which published form of the tractive force method.
enum class TractiveForm {
  lane,         ///< Lane (1955): allowable shear 0.4·D75 (lb/ft², in)
  far_western,  ///< NRCS TS14C, far western states: D75 = 3.5/(C·K)·γw·d·S
};

/// Tractive force method for channels in coarse material without cohesion. D75 in inches, shear in
/// lb/ft²; K carries the side slope, C (far-western form only) the bend.
struct TractiveForceInputs {
  TractiveForm form = TractiveForm::far_western;
  Length depth;
  Slope slope;
  Angle bank_angle;  ///< from horizontal; 0 on a bed
  Angle angle_of_repose = Angle::degrees(40);
  std::optional<Length> bend_radius;  ///< absent on a straight reach
  std::optional<Length> top_width;    ///< needed in a bend
};

struct TractiveForceResult {
  Stress bed_shear;    ///< γw·d·S
  Stress shear;        ///< on the bank 0.75 of it (Lane's form)
  Dimensionless k;     ///< side-slope factor
  Dimensionless bend;  ///< C
  Length d75;
};

/// C of the far-western form by R/W: 1.0 on a straight reach and above 12; 0.60 below 6.
Dimensionless far_western_bend_factor(std::optional<double> r_over_w);

/// K of the far-western form by the side slope (horizontal over vertical): printed at 1.5, 1.75, 2,
/// 2.5 and 3, straight between; flatter than 3 by the formula with repose 40°, steeper than 1.5 by
/// the first value.
Dimensionless far_western_side_factor(Angle bank);

/// Problems: a bend without width; in Lane's form a bank as steep as the angle of repose.
Expected<TractiveForceResult> tractive_force(const TractiveForceInputs& inputs, Steps& steps);

const SizingMethod& tractive_force_method();

}  // namespace proofstone
