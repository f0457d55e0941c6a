#pragma once

#include <optional>

#include "engine/method/typed_method.h"

namespace proofstone {

/// How far down a bank a cover of topsoil and plants may be carried before the frequent flow takes
/// it: the depth of water at which the shear on the bank equals what the cover bears. Shear by FHWA
/// HEC-15 3rd ed. (2005) ch. 3.
struct CoverLineInputs {
  Length depth;      ///< of the frequent flow at the toe of the bank
  Slope slope;       ///< of the energy line
  Angle bank_angle;  ///< from horizontal
  Dimensionless bend_factor = Dimensionless::number(1);  ///< Kb
  Stress established_shear;                              ///< what the grown cover bears
  std::optional<Stress> new_shear;  ///< what protects it until then, such as a blanket, bears
};

struct CoverLineResult {
  Stress toe_shear;           ///< on the bank at its toe
  Length established_depth;   ///< depth of water over the grown cover that it bears
  Length new_depth;           ///< the same until it has grown
  Length established_height;  ///< above the toe: the grown cover survives from here up
  Length new_height;          ///< above the toe: the new cover survives from here up
};

Expected<CoverLineResult> cover_line(const CoverLineInputs& inputs, Steps& steps);

const Method& cover_line_method();

}  // namespace proofstone
