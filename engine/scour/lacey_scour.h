#pragma once

#include "engine/scour/regime_scour.h"

namespace proofstone {

/// General scour by Lacey: d = 0.47·(Q/f)^⅓, f = 1.76·√Dm with Dm in millimetres; the coefficient
/// is the same in feet and metres. USBR (Pemberton and Lara 1984), NRCS NEH 654 TS14B [memory].
struct LaceyScourInputs : RegimeScourInputs {
  Discharge discharge;
  Length bed_grain;  ///< mean grain size of the bed
};

Expected<RegimeScourResult> lacey_scour(const LaceyScourInputs& inputs, Steps& steps);

const Method& lacey_scour_method();

}  // namespace proofstone
