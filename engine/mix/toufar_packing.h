#pragma once

#include "engine/method/typed_method.h"

namespace proofstone {

/// Two sizes by the modified model of Toufar: an answer of another hand beside the compressible
/// packing model.
struct ToufarPackingInputs {
  Length coarse_size;
  Length fine_size;
  Dimensionless coarse_density = Dimensionless::number(0.60);  ///< solids share packed alone
  Dimensionless fine_density = Dimensionless::number(0.65);
  Dimensionless fine_share;  ///< of the volume of all solids
};

struct ToufarPackingResult {
  Dimensionless density;  ///< solids share of the mix
};

Expected<ToufarPackingResult> toufar_packing(const ToufarPackingInputs& inputs, Steps& steps);

const Method& toufar_packing_method();

}  // namespace proofstone
