#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Depth a bed lowers itself until its own coarse grains cover it: zd = ya·(1/ΔP − 1), ya the
/// smaller of 3·Dc and 0.5 ft. USBR (Pemberton and Lara 1984) [memory].
struct ArmouringInputs {
  Length armour_grain;         ///< Dc, the smallest grain the flow leaves
  Dimensionless coarse_share;  ///< ΔP, share of the bed coarser than it, 0 to 1
};

struct ArmouringResult {
  Length armour_layer;
  Length degradation;
};

Expected<ArmouringResult> armouring_scour(const ArmouringInputs& inputs, Steps& steps);

const Method& armouring_scour_method();

}  // namespace proofstone
