#pragma once

#include <vector>
#include "engine/method/typed_method.h"

#include "engine/mix/packing_model.h"

namespace proofstone {

/// Any number of sizes by the compressible packing model (de Larrard 1999).
struct PackingOfClassesInputs {
  std::vector<Length> sizes;             ///< the first is the rock
  std::vector<Dimensionless> densities;  ///< solids share of each packed alone
  std::vector<Dimensionless> shares;     ///< of the volume of all solids; 1 together
  Dimensionless index = Dimensionless::number(rodded_index);
};

struct PackingOfClassesResult {
  Dimensionless density;      ///< solids share of the mix
  Dimensionless rock_solids;  ///< of the first size, share of the mix's volume
  Dimensionless dilation;     ///< of the first size
};

Expected<PackingOfClassesResult> packing_of_classes(const PackingOfClassesInputs& inputs,
                                                    Steps& steps);

const Method& packing_of_classes_method();

}  // namespace proofstone
