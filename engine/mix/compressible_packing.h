#pragma once

#include "engine/method/typed_method.h"
#include "engine/mix/packing_model.h"

namespace proofstone {

/// Rock and one fill by the compressible packing model (de Larrard 1999): how dense the mix is and
/// how far the fill forces the rock apart.
struct CompressiblePackingInputs {
  Length rock_size;
  Length fill_size;
  Dimensionless rock_density = Dimensionless::number(0.60);  ///< solids share packed alone
  Dimensionless fill_density = Dimensionless::number(0.65);
  Dimensionless fill_share;  ///< of the volume of all solids
  Dimensionless index = Dimensionless::number(rodded_index);
};

struct CompressiblePackingResult {
  Dimensionless loosening_effect;  ///< of the fill on the rock
  Dimensionless wall_effect;       ///< of the rock on the fill
  Dimensionless density;           ///< solids share of the mix
  Dimensionless rock_solids;       ///< share of the mix's volume
  Dimensionless dilation;          ///< 1: the rock lies as it would alone
};

Expected<CompressiblePackingResult> rock_and_fill_packing(const CompressiblePackingInputs& inputs,
                                                          Steps& steps);

const Method& rock_and_fill_packing_method();

}  // namespace proofstone
