#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Chance that armour stone of a slope in waves is displaced beyond the damage that its KD stands
/// for: limit state Z = A·Δ·Dn50·(KD·cot α)^⅓ − Hs (USACE EM 1110-2-1100, Coastal Engineering
/// Manual, Part VI Ch. 6; PIANC 1992).
struct HudsonReliabilityInputs {
  Length nominal_size;                  ///< Dn50 = (M50/ρ)^⅓, mean
  Dimensionless relative_density;       ///< Δ = ρs/ρw − 1, mean
  Dimensionless stability_coefficient;  ///< KD
  Dimensionless cot_slope;              ///< cot α, mean
  Length wave_height;                   ///< Hs, mean
  Dimensionless nominal_size_variation;
  Dimensionless relative_density_variation;
  Dimensionless cot_slope_variation;
  Dimensionless wave_height_variation;
  Dimensionless formula_variation;  ///< of A, whose mean is 1
};

struct HudsonReliabilityResult {
  Length capacity;  ///< wave height that the armour bears at the means
  Length margin;    ///< Z at the means
  Length spread;    ///< σZ
  Dimensionless beta;
  Dimensionless probability;
  Dimensionless wave_height_share;  ///< of the variance
  Dimensionless formula_share;
  Dimensionless design_point_beta;  ///< FORM, all quantities normal
  Dimensionless design_point_probability;
};

/// Problems: nothing is uncertain; no design point within 8 standard deviations.
Expected<HudsonReliabilityResult> hudson_reliability(const HudsonReliabilityInputs& inputs,
                                                     Steps& steps);

const Method& hudson_reliability_method();

}  // namespace proofstone
