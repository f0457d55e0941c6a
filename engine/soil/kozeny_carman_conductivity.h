#pragma once

#include "engine/method/method.h"

namespace proofstone {

enum class WaterTemperature { ten, twenty };  ///< degrees Celsius

struct KozenyCarmanInputs {
  Dimensionless porosity;
  Length grain_size;
  WaterTemperature temperature = WaterTemperature::ten;
};

struct KozenyCarmanResult {
  Velocity conductivity;
};

/// Conductivity of grains of one size: (g/ν)·(1/180)·n³/(1 − n)²·d².
Expected<KozenyCarmanResult> kozeny_carman_conductivity(const KozenyCarmanInputs& in, Steps& steps);

/// The same by name: "kozeny-carman-conductivity".
const Method& kozeny_carman_conductivity_method();

}  // namespace proofstone
