#pragma once

#include "engine/cover/bare_soil_shear.h"

namespace proofstone {

/// Rolled erosion control product (open weave, blanket, mat) on bare soil: FHWA HEC-15 3rd ed.
/// (2005) ch. 5, SI units. The product's own strength comes from its test.
struct RolledProductShearInputs : BareSoilShearInputs {
  Stress tested_shear;  ///< τl: applied shear with 12.5 mm (0.5 in) of soil loss in the test
  std::optional<Stress> applied_shear;  ///< τd, to see what reaches the soil
};

struct RolledProductShearResult {
  Stress soil_shear;         ///< τp,soil
  Stress permissible_shear;  ///< τp,lining
  Stress effective_shear;    ///< τe on the soil at τd; 0 where τd is not given
};

/// Problems: those of the soil.
Expected<RolledProductShearResult> rolled_product_shear(const RolledProductShearInputs& inputs,
                                                        Steps& steps);

const Method& rolled_product_shear_method();

}  // namespace proofstone
