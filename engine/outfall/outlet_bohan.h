#pragma once

#include <optional>

#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Rock below a pipe from the Froude number of the outlet, by low or high tailwater: Bohan, as in
/// FHWA HEC-14 3rd ed. (2006) App. D, eq. D.4. Homogeneous.
struct OutletBohanInputs {
  Velocity velocity;  ///< Vo at the outlet
  Length diameter;
  std::optional<Length> tailwater;  ///< absent: low, which asks for larger rock
};

struct OutletBohanResult {
  Dimensionless froude_number;  ///< Vo/√(g·D)
  Length d50;
};

/// Problem (no-size): a Froude number so low that the high-tailwater form gives no size above 0.
Expected<OutletBohanResult> outlet_bohan(const OutletBohanInputs& inputs, Steps& steps);

const SizingMethod& outlet_bohan_method();

}  // namespace proofstone
