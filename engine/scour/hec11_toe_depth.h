#pragma once

#include "engine/method/method.h"
#include "engine/quantity/quantity.h"

namespace proofstone {

/// Toe scour below the lowest point of the bed by FHWA HEC-11 (1989) eqs. 4 and 5 [memory]:
/// 12 ft where the bed's D50 is below 0.005 ft, otherwise 6.5·D50^−0.11 (ft). The two do not meet:
/// at 0.005 ft the second gives 11.64 ft.
struct Hec11ToeInputs {
  Length bed_grain;  ///< D50 of the bed
};

struct Hec11ToeResult {
  Length scour;
};

Expected<Hec11ToeResult> hec11_toe_depth(const Hec11ToeInputs& inputs, Steps& steps);

const Method& hec11_toe_depth_method();

}  // namespace proofstone
