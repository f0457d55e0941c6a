#pragma once

#include "engine/chute/chute_flow.h"

namespace proofstone {

/// Low drop with a floor block and an end sill (Rice and Kadavy): the shape that keeps the drop's
/// jet in its basin. Homogeneous.
struct LowDropInputs : ChuteFlow {
  Length drop_height;  ///< h
};

struct LowDropResult {
  Length critical_depth;             ///< dc
  Dimensionless drop_over_critical;  ///< h/dc
  Length block_height;               ///< 0.5·dc, upstream face 1:2
  Length sill_height;                ///< 0.25·dc, upstream face 3:1
};

/// Problems: the unit discharge is not known.
Expected<LowDropResult> low_drop(const LowDropInputs& inputs, Steps& steps);

const Method& low_drop_method();

}  // namespace proofstone
