#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Long-term lowering of a bed that turns from its present slope to a flatter limiting one above
/// what holds it (rock, a drop, a confluence): (S − S_L)·L, not below 0. NRCS NEH 654 TS14B (2007)
/// [memory].
struct DegradationInputs {
  Slope existing_slope;
  Slope limiting_slope;  ///< by schoklitsch_slope or meyer_peter_muller_slope
  Length distance_to_control;
};

struct DegradationResult {
  Length degradation;
};

Expected<DegradationResult> degradation_above_control(const DegradationInputs& inputs,
                                                      Steps& steps);

const Method& degradation_above_control_method();

}  // namespace proofstone
