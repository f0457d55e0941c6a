#pragma once

#include <optional>

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Greatest depth of water at the toe of a protected bend: Maynord, Journal of Hydraulic
/// Engineering 122(8), 1996: Dmb/Dmnc = SF·[1.8 − 0.051·(Rc/W) + 0.0084·(W/Dmnc)]. Limits published
/// (abstract), coefficients from memory. Rc/W below 1.5 counts as 1.5 and W/Dmnc below 20 as 20.
struct MaynordBendInputs {
  Length bend_radius;     ///< Rc, centreline
  Length width;           ///< W, water surface at the upstream crossing
  Length crossing_depth;  ///< Dmnc, mean depth at the upstream crossing
  Dimensionless safety_factor = Dimensionless::number(1);
  std::optional<Length> existing_depth;  ///< greatest depth in the bend now
  /// Depth on the overbank over channel depth, where water stands above the banks.
  std::optional<Dimensionless> overbank_ratio;
};

struct MaynordBendResult {
  Length bend_depth;  ///< Dmb, from the water surface
  Length scour;       ///< below the existing bed, or below the mean depth of the crossing
};

Expected<MaynordBendResult> maynord_bend_scour(const MaynordBendInputs& inputs, Steps& steps);

const Method& maynord_bend_scour_method();

}  // namespace proofstone
