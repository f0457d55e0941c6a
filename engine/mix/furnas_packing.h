#pragma once

#include <vector>
#include "engine/method/typed_method.h"

namespace proofstone {

/// The densest that sizes far apart can pack, each filling the voids of the coarser ones without
/// disturbing them (Furnas 1931): Φ = φ1 + (1 − φ1)·φ2 + (1 − φ1)(1 − φ2)·φ3 …
struct FurnasPackingInputs {
  std::vector<Dimensionless> densities;  ///< solids share of each packed alone, coarse to fine
};

struct FurnasPackingResult {
  Dimensionless density;         ///< solids share of the mix
  Dimensionless coarsest_share;  ///< of the solids
  Dimensionless finest_share;
};

Expected<FurnasPackingResult> furnas_packing(const FurnasPackingInputs& inputs, Steps& steps);

const Method& furnas_packing_method();

}  // namespace proofstone
