#pragma once

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Rock of a constructed riffle by tractive force: Newbury and Gaboury. SI units: τ = 1000·d·S in
/// kilogram-force for each m²; rock diameter in cm equal to τ times a safety factor.
struct ConstructedRiffleInputs {
  Length depth;  ///< over the riffle face at the design discharge
  Slope slope;   ///< of the riffle's downstream face
  Dimensionless safety_factor = Dimensionless::number(1.5);
};

struct ConstructedRiffleResult {
  Stress tractive_force;
  Length stable_size;    ///< diameter that tractive force just moves
  Length rock_diameter;  ///< with the safety factor
};

Expected<ConstructedRiffleResult> constructed_riffle(const ConstructedRiffleInputs& inputs,
                                                     Steps& steps);

const SizingMethod& constructed_riffle_method();

}  // namespace proofstone
