#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Roughness of a rolled erosion control product by three tested values: FHWA HEC-15 3rd ed. (2005)
/// ch. 5, n = a·τo^b, tests at half, once and twice the middle shear. SI units.
struct RolledProductRoughnessInputs {
  Dimensionless roughness_lower;   ///< n at half the middle shear
  Dimensionless roughness_middle;  ///< n at the middle shear
  Dimensionless roughness_upper;   ///< n at twice the middle shear
  Stress middle_shear;
  Stress shear;  ///< τo at which n is wanted
};

struct RolledProductRoughnessResult {
  Dimensionless a;
  Dimensionless b;
  Dimensionless roughness;
};

/// Problem (not-falling): tested roughness that does not fall as the shear grows.
Expected<RolledProductRoughnessResult> rolled_product_roughness(
    const RolledProductRoughnessInputs& inputs, Steps& steps);

const Method& rolled_product_roughness_method();

}  // namespace proofstone
