#pragma once

#include "engine/method/method.h"
#include "engine/soil/gradation_inputs.h"

namespace proofstone {

struct KezdiInputs : GradationInputs {
  Dimensionless limit = Dimensionless::number(4);  ///< 5 by Sherard (1979)
};

struct KezdiResult {
  Dimensionless ratio;  ///< largest D15 of the coarse part over d85 of the fine part
  Dimensionless at;     ///< percent smaller where the curve is split there
  Dimensionless margin;
};

/// The curve split at every whole percent from 5 to 60: does the coarse part filter the fine part?
Expected<KezdiResult> kezdi(const KezdiInputs& in, Steps& steps);

/// The same by name: "kezdi".
const Method& kezdi_method();

}  // namespace proofstone
