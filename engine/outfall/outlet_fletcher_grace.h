#pragma once

#include "engine/outfall/conduit_end.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Rock below a pipe in the earlier print of the Fletcher and Grace equation: FHWA HEC-14 3rd ed.
/// (2006) App. D, eq. D.5, US units (the unit factor α, 0.55 in SI, divides Q).
struct OutletFletcherGraceInputs : ConduitEnd {
  Length diameter;
};

struct OutletFletcherGraceResult {
  Length tailwater_used;
  Length d50;
};

/// Problem: a normal depth not less than the diameter.
Expected<OutletFletcherGraceResult> outlet_fletcher_grace(const OutletFletcherGraceInputs& inputs,
                                                          Steps& steps);

const SizingMethod& outlet_fletcher_grace_method();

}  // namespace proofstone
