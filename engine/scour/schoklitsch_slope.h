#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Slope at which a bed moves no more by Schoklitsch, S = 0.00174·(D·B/Q)^¾ with D in millimetres,
/// B in feet and Q in ft³/s. USBR (Pemberton and Lara 1984)
/// [memory].
struct SchoklitschInputs {
  Length bed_grain;  ///< mean grain size
  Length width;
  Discharge discharge;  ///< that forms the channel
};

struct SchoklitschResult {
  Slope limiting_slope;
};

Expected<SchoklitschResult> schoklitsch_slope(const SchoklitschInputs& inputs, Steps& steps);

const Method& schoklitsch_slope_method();

}  // namespace proofstone
