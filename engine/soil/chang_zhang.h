#pragma once

#include "engine/method/method.h"
#include "engine/soil/gradation_inputs.h"

namespace proofstone {

struct ChangZhangInputs : GradationInputs {};

struct ChangZhangResult {
  Dimensionless fines;
  Dimensionless gap_ratio;  ///< 0 where there is no gap
  Dimensionless margin;     ///< to the limit that decides
};

/// By fines and gap ratio: gap-graded soils with few fines hang on the gap, well-graded ones on
/// H/F; many fines are stable. Between, the published limits were not seen: a Problem says so.
Expected<ChangZhangResult> chang_zhang(const ChangZhangInputs& in, Steps& steps);

/// The same by name: "chang-zhang".
const Method& chang_zhang_method();

}  // namespace proofstone
