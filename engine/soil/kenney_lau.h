#pragma once

#include "engine/method/method.h"
#include "engine/soil/gradation_inputs.h"

namespace proofstone {

struct KenneyLauInputs : GradationInputs {
  Dimensionless limit = Dimensionless::number(1);  ///< 1.0 (1986); 1.3 in the paper of 1985
};

struct KenneyLauResult {
  Dimensionless ratio;  ///< least H/F
  Dimensionless at;     ///< percent smaller where it stands
  Dimensionless up_to;  ///< percent smaller up to which the curve is looked at
  Dimensionless margin;
};

/// F = P(D), H = P(4D) − P(D): the least H/F over the finer part of the curve, whole percent by
/// whole percent, up to 20 % or, where Cu is at most 3, up to 30 %.
Expected<KenneyLauResult> kenney_lau(const KenneyLauInputs& in, Steps& steps);

/// The same by name: "kenney-lau".
const Method& kenney_lau_method();

}  // namespace proofstone
