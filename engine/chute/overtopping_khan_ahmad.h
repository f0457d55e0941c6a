#pragma once

#include "engine/chute/chute_flow.h"
#include "engine/sizing/sizing_method.h"

namespace proofstone {

/// Rock on an overtopped slope with the layer thickness in the equation: Khan and Ahmad 2011, a fit
/// to 53 tests. SI units: D50 and t in m, q in m²/s.
struct OvertoppingKhanAhmadInputs : ChuteFlow {
  Slope slope;
  Dimensionless uniformity = Dimensionless::number(1.75);       ///< Cu = D60/D10
  std::optional<Length> layer_thickness;                        ///< t, when it is fixed
  Dimensionless thickness_in_sizes = Dimensionless::number(2);  ///< t/D50 where t is not fixed
};

struct OvertoppingKhanAhmadResult {
  Length layer_thickness;
  Length d50;
};

/// Problems: the unit discharge is not known.
Expected<OvertoppingKhanAhmadResult> overtopping_khan_ahmad(
    const OvertoppingKhanAhmadInputs& inputs, Steps& steps);

const SizingMethod& overtopping_khan_ahmad_method();

}  // namespace proofstone
