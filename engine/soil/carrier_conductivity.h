#pragma once

#include "engine/method/method.h"
#include "engine/soil/gradation_inputs.h"

namespace proofstone {

enum class GrainShape { rounded, medium, angular, spheres };

struct CarrierConductivityInputs : GradationInputs {
  Dimensionless void_ratio;
  GrainShape shape = GrainShape::medium;
  std::optional<Length> smallest_grain;  ///< of what is smaller than the finest sieve
};

struct CarrierConductivityResult {
  Length effective_size;
  Velocity conductivity;
};

/// Kozeny–Carman over a whole curve, in Carrier's form, at 20 °C.
Expected<CarrierConductivityResult> carrier_conductivity(const CarrierConductivityInputs& in,
                                                         Steps& steps);

/// The same by name: "carrier-conductivity".
const Method& carrier_conductivity_method();

}  // namespace proofstone
