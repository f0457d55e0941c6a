#pragma once

#include "engine/method/method.h"

namespace proofstone {

struct HazenConductivityInputs {
  Length d10;
  Dimensionless coefficient = Dimensionless::number(100);
  std::optional<Dimensionless> uniformity;
};

struct HazenConductivityResult {
  Velocity conductivity;
};

/// k = C·D10², k in cm/s and D10 in cm.
Expected<HazenConductivityResult> hazen_conductivity(const HazenConductivityInputs& in,
                                                     Steps& steps);

/// The same by name: "hazen-conductivity".
const Method& hazen_conductivity_method();

}  // namespace proofstone
