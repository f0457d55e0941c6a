#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Chance that rock on a bank or bed moves in the design flood, by first-order second-moment on the
/// USACE equation (EM 1110-2-1601 eq. 3-3). The margin is G = ln(available / required) with
/// required ∝ V^2.5 · d^−0.25 · [γw/(γs−γw)]^1.25, so that
/// σG² = (2.5 δV)² + (0.25 δd)² + (1.25·γs/(γs−γw)·δγ)² + δD² + δC².
///
/// Coefficients of variation are what the designer states; none is a default. 0 takes a quantity as
/// certain.
struct ChanceOfInstabilityInputs {
  Length available_size;  ///< mean D30 of the rock that is there
  Length required_size;   ///< D30 by the equation at the mean values, with a safety factor of 1
  Dimensionless specific_gravity = Dimensionless::number(2.65);
  Dimensionless velocity_variation;
  Dimensionless depth_variation;
  Dimensionless unit_weight_variation;
  Dimensionless size_variation;
  Dimensionless model_variation;  ///< of the formula itself
};

struct ChanceOfInstabilityResult {
  Dimensionless size_ratio;  ///< available over required
  Dimensionless spread;      ///< σG
  Dimensionless beta;        ///< reliability index
  Dimensionless probability;
  Dimensionless velocity_share;  ///< of the variance, 0 to 1
  Dimensionless depth_share;
  Dimensionless unit_weight_share;
  Dimensionless size_share;
  Dimensionless model_share;
  Dimensionless lognormal_beta;         ///< design point of lognormal quantities, closed form
  Dimensionless lognormal_probability;  ///< what sampling of lognormal quantities tends to
};

/// Problem: nothing is uncertain.
Expected<ChanceOfInstabilityResult> chance_of_instability(const ChanceOfInstabilityInputs& inputs,
                                                          Steps& steps);

const Method& chance_of_instability_method();

}  // namespace proofstone
