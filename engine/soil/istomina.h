#pragma once

#include "engine/method/method.h"
#include "engine/soil/gradation_inputs.h"

namespace proofstone {

struct IstominaInputs : GradationInputs {};

struct IstominaResult {
  Dimensionless uniformity;
  Dimensionless margin;  ///< 10 over Cu: 1 and more is safe, below 0.5 unstable, doubtful between
};

/// By uniformity alone, for soils without fines: below 10 safe, above 20 unstable.
Expected<IstominaResult> istomina(const IstominaInputs& in, Steps& steps);

/// The same by name: "istomina".
const Method& istomina_method();

}  // namespace proofstone
