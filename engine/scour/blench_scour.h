#pragma once

#include "engine/scour/regime_scour.h"

namespace proofstone {

/// General scour by Blench: d = q^⅔/Fb^⅓ (ft²/s, ft/s², ft), q the design discharge for each unit
/// of width and Fb the zero bed factor. Fb is read from a chart and may be stated; otherwise it is
/// that of the fit in NRCS NEH 654 TS14B, d_s = 0.530·q^⅔·D50^−0.1092 for Z 0.6 (D50 in mm).
/// [memory]
struct BlenchScourInputs : RegimeScourInputs {
  UnitDischarge unit_discharge;
  std::optional<Length> bed_grain;               ///< D50 of the bed; for the fit
  std::optional<Dimensionless> zero_bed_factor;  ///< from the chart, in ft/s²
};

Expected<RegimeScourResult> blench_scour(const BlenchScourInputs& inputs, Steps& steps);

const Method& blench_scour_method();

}  // namespace proofstone
